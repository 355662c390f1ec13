package leadlight.report.json;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leadlight.data.Cells;
import leadlight.model.Measure;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.report.words.LegWords;
import leadlight.report.words.Rounded;
import leadlight.report.words.Task;
import leadlight.report.words.Words;
import leadlight.text.Sentences;

/**
 * A scored photo as a table (RFC 4180, UTF-8): one line per joint; a photo without a row gives one
 * line without a pin that says why. Units stand in the headers.
 */
public final class CsvReport {

  private static final int MEASURE_DECIMALS = 5;
  private static final int PX_DECIMALS = 3;

  private static final Sentences SENTENCES = Sentences.english();

  private CsvReport() {}

  static byte[] bytes(ScoredPhoto scored) {
    return bytes(scored, new LegSet(List.of(), List.of()));
  }

  /** The same with a line for each anchor leg; it has no pin and stands after the joints. */
  public static byte[] bytes(ScoredPhoto scored, LegSet legs) {
    StringWriter out = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
      csv.writeRecord(header());
      for (GradedJoint joint : scored.joints()) {
        csv.writeRecord(line(scored, joint));
      }
      if (scored.row() instanceof RowOutcome.NotFound none) {
        csv.writeRecord(lineWithoutRow(scored, none));
      }
      for (LegSet.Joined leg : legs.legs()) {
        csv.writeRecord(line(scored, leg));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> header() {
    List<String> header =
        new ArrayList<>(
            List.of(
                "photo",
                "pin",
                "name",
                "verdict",
                "findings",
                "evidence",
                "clause",
                "settle_by",
                "task",
                "tool",
                "unjudged_because",
                "doubts",
                "toe_x_px",
                "toe_y_px",
                "heel_x_px",
                "heel_y_px"));
    for (Measure measure : Measure.values()) {
      header.add(measure.id());
      header.add("u_" + measure.id());
    }
    return header;
  }

  private static List<String> line(ScoredPhoto scored, GradedJoint graded) {
    List<Finding> findings = graded.findings();
    List<String> line = new ArrayList<>();
    line.add(Cells.harmless(scored.photo().file()));
    line.add(Integer.toString(graded.pin()));
    line.add(Cells.harmless(scored.settings().row().lands().get(graded.pin() - 1).name()));
    line.add(graded.verdict().id());
    line.add(findings.stream().map(Words::finding).collect(Collectors.joining("; ")));
    line.add(Cells.harmless(joined(findings.stream().map(SENTENCES::evidence).toList())));
    line.add(Cells.harmless(joined(findings.stream().map(Finding::clause).toList())));
    line.add(Cells.harmless(joined(findings.stream().map(SENTENCES::settle).toList())));
    line.add(Task.of(graded).id());
    line.add(Task.of(graded).tool());
    line.add(Cells.harmless(SENTENCES.joined(graded.doubts())));
    line.add(graded.doubts().stream().map(Doubt::code).distinct().collect(Collectors.joining(" ")));
    addPoint(line, graded.joint().lead().toePx());
    addPoint(line, graded.joint().lead().heelPx());
    for (Measure measure : Measure.values()) {
      Quantity quantity = graded.joint().measures().get(measure);
      line.add(quantity == null ? "" : number(quantity.value(), MEASURE_DECIMALS));
      line.add(quantity == null ? "" : number(quantity.u(), MEASURE_DECIMALS));
    }
    return line;
  }

  private static List<String> line(ScoredPhoto scored, LegSet.Joined leg) {
    List<String> line = new ArrayList<>();
    line.add(
        Cells.harmless(leg.seen().isEmpty() ? scored.photo().file() : leg.seen().get(0).file()));
    line.add("");
    line.add(LegWords.name(leg));
    line.add(leg.verdict().id());
    line.add(joined(leg.seen().stream().map(it -> LegWords.kinds(it.leg())).toList()));
    line.add(LegWords.said(leg));
    line.add(
        Cells.harmless(
            joined(leg.seen().stream().flatMap(it -> it.leg().clauses().stream()).toList())));
    line.add("");
    line.add("");
    line.add("");
    line.add(SENTENCES.joined(leg.doubts()));
    line.add(leg.doubts().stream().map(Doubt::code).distinct().collect(Collectors.joining(" ")));
    if (leg.seen().isEmpty()) {
      line.add("");
      line.add("");
    } else {
      addPoint(line, leg.seen().get(0).leg().centre());
    }
    while (line.size() < header().size()) {
      line.add("");
    }
    return line;
  }

  private static List<String> lineWithoutRow(ScoredPhoto scored, RowOutcome.NotFound none) {
    List<String> line = new ArrayList<>();
    line.add(Cells.harmless(scored.photo().file()));
    line.add("");
    line.add("");
    line.add(scored.verdict().id());
    line.addAll(List.of("", "", "", "", "", ""));
    line.add(Cells.harmless(SENTENCES.of(none.reason())));
    line.add(none.reason().code());
    while (line.size() < header().size()) {
      line.add("");
    }
    return line;
  }

  private static String joined(List<String> texts) {
    return texts.stream().filter(t -> !t.isEmpty()).distinct().collect(Collectors.joining("; "));
  }

  private static void addPoint(List<String> line, PointPx point) {
    line.add(number(point.x(), PX_DECIMALS));
    line.add(number(point.y(), PX_DECIMALS));
  }

  private static String number(double value, int decimals) {
    return Rounded.to(value, decimals).toPlainString();
  }
}
