package leadlight.app.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.data.Cells;
import leadlight.data.JsonText;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.joint.Finding;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.said.Standing;
import leadlight.record.scoring.Scoring;
import leadlight.text.Sentences;

/** Writes scorings with their joints, one at a time. */
public final class RecordExport {

  private static final List<String> HEADER =
      List.of(
          "scoring",
          "job",
          "board",
          "stage",
          "attempt",
          "photo",
          "sha256",
          "taken_at",
          "scored_at",
          "by",
          "tool_version",
          "reader",
          "limits",
          "class",
          "connector",
          "pin",
          "verdict",
          "findings",
          "unjudged_because",
          "counts_by",
          "tool_verdict",
          "tool_findings",
          "overruled_as",
          "overruled_by",
          "reason",
          "bench",
          "taken_back");

  private static final Sentences SENTENCES = Sentences.english();

  private final JobRecord record;
  private final List<Scoring> scorings;

  public RecordExport(JobRecord record, List<Scoring> scorings) {
    this.record = record;
    this.scorings = scorings;
  }

  public void write(OutputStream out, boolean json) throws IOException {
    if (json) {
      json(out);
    } else {
      csv(out);
    }
  }

  private void json(OutputStream out) throws IOException {
    try (JsonGenerator generator = new JsonFactory().createGenerator(out)) {
      generator.writeStartArray();
      for (Scoring scoring : scorings) {
        generator.writeStartObject();
        generator.writeFieldName("scoring");
        generator.writeRawValue(JsonText.of(scoring));
        generator.writeFieldName("joints");
        generator.writeRawValue(JsonText.of(record.row(scoring.id()).joints()));
        generator.writeEndObject();
        generator.writeRaw('\n');
      }
      generator.writeEndArray();
    }
  }

  private void csv(OutputStream out) throws IOException {
    try (CsvWriter csv =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.CRLF)
            .build(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      List<String> header = new ArrayList<>(HEADER);
      for (Measure measure : Measure.values()) {
        header.add(measure.id());
        header.add("u_" + measure.id());
      }
      header.addAll(RecordOpinions.header());
      csv.writeRecord(header);
      for (Scoring scoring : scorings) {
        RecordedRow row = record.row(scoring.id());
        for (RecordedJoint joint : row.joints()) {
          csv.writeRecord(line(scoring, joint));
        }
        if (row.joints().isEmpty()) {
          csv.writeRecord(withoutRow(scoring, header.size()));
        }
      }
    }
  }

  private static List<String> line(Scoring scoring, RecordedJoint joint) {
    List<String> line = new ArrayList<>(of(scoring));
    line.add("" + joint.pin());
    Standing standing = joint.standing();
    line.add(standing.joint().verdict().id());
    line.add(words(standing.joint().findings()));
    line.add(Cells.harmless(SENTENCES.joined(standing.joint().doubts())));
    line.add(standing.source().id());
    line.add(joint.tool().verdict().id());
    line.add(words(joint.tool().findings()));
    line.add(last(joint.overrules().stream().map(opinion -> opinion.verdict().id())));
    line.add(last(joint.overrules().stream().map(opinion -> opinion.person())));
    line.add(last(joint.overrules().stream().map(opinion -> opinion.reason())));
    line.add(joint.bench().stream().map(RecordLines::result).collect(Collectors.joining("; ")));
    line.add(
        Cells.harmless(
            joint.takenBack().stream()
                .map(RecordLines::takenBack)
                .collect(Collectors.joining("; "))));
    for (Measure measure : Measure.values()) {
      Quantity quantity = joint.tool().joint().measures().get(measure);
      line.add(quantity == null ? "" : Double.toString(quantity.value()));
      line.add(quantity == null ? "" : Double.toString(quantity.u()));
    }
    line.addAll(RecordOpinions.cells(joint.tool().joint()));
    return line;
  }

  private static String words(List<Finding> findings) {
    return findings.stream().map(RecordExport::words).collect(Collectors.joining("; "));
  }

  private static String words(Finding finding) {
    String pins = finding.pins().stream().map(String::valueOf).collect(Collectors.joining("-"));
    return finding.kind().id() + (finding.pins().size() > 1 ? " " + pins : "");
  }

  private static String last(Stream<String> texts) {
    return Cells.harmless(texts.reduce((first, second) -> second).orElse(""));
  }

  private static List<String> withoutRow(Scoring scoring, int columns) {
    List<String> line = new ArrayList<>(of(scoring));
    line.addAll(List.of("", scoring.verdict().id(), ""));
    line.add(Cells.harmless(scoring.rowReason().map(SENTENCES::of).orElse("")));
    while (line.size() < columns) {
      line.add("");
    }
    return line;
  }

  private static List<String> of(Scoring scoring) {
    return List.of(
        "" + scoring.id(),
        Cells.harmless(scoring.subject().job()),
        Cells.harmless(scoring.subject().board()),
        scoring.subject().stage().id(),
        "" + scoring.subject().attempt(),
        Cells.harmless(scoring.photo().file()),
        scoring.photo().sha256(),
        scoring.photo().takenAt().orElse(""),
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(scoring.scoredAt()),
        Cells.harmless(scoring.person()),
        scoring.method().toolVersion(),
        scoring.method().reader().orElse(""),
        Cells.harmless(scoring.method().settings().acceptanceSet()),
        "" + scoring.method().settings().productClass(),
        Cells.harmless(scoring.method().settings().row().connectorId()));
  }
}
