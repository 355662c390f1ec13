package leadlight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.PhotoInfo;
import leadlight.report.json.JsonFields;
import leadlight.report.json.JsonLegs;
import leadlight.report.json.JsonRemarks;
import leadlight.report.words.Columns;
import leadlight.report.words.LegWords;
import leadlight.report.words.Words;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * The anchor legs of one photo as JSON and as lines for the terminal.
 *
 * @param photo the file
 * @param side the side that it shows
 * @param productClass 1, 2 or 3
 * @param legs the legs
 */
public record LegsReport(PhotoInfo photo, BoardSide side, int productClass, List<GradedLeg> legs) {

  private static final Sentences SENTENCES = Sentences.english();

  /** Copies the list. */
  public LegsReport {
    legs = List.copyOf(legs);
  }

  /** The worst of the legs; unjudged if none was found. */
  public Verdict verdict() {
    return legs.stream().map(GradedLeg::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED);
  }

  private static List<Note> notVisible() {
    return List.of(
        new NoteOfRow.HoleFill(),
        new NoteOfRow.UnderLump(),
        new NoteOfRow.OtherSide(),
        new NoteOfRow.LegsOfPhotographs());
  }

  /** The report, UTF-8. */
  public byte[] json() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
      write(json);
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private void write(JsonGenerator json) throws IOException {
    JsonFields fields = new JsonFields(json);
    JsonRemarks remarks = new JsonRemarks(json, SENTENCES);
    json.writeStartObject();
    fields.text("schema", "leadlight-legs-1");
    json.writeObjectFieldStart("photo");
    fields.text("file", photo.file());
    fields.text("sha256", photo.sha256());
    json.writeEndObject();
    fields.text("side", side.id());
    fields.whole("class", productClass);
    json.writeArrayFieldStart("legs");
    JsonLegs each = new JsonLegs(json, SENTENCES);
    for (GradedLeg leg : legs) {
      each.leg(leg);
    }
    json.writeEndArray();
    fields.text("verdict", verdict().id());
    remarks.sentencesAndCodes("not_visible", notVisible());
    fields.text("certificate", Words.NO_CERTIFICATE);
    json.writeEndObject();
  }

  /** The lines, a leg each in their order, at most 80 characters wide but for the file's name. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(photo.file() + ": " + headline());
    for (GradedLeg leg : legs) {
      lines.addAll(Columns.wrapped("  " + LegWords.name(leg) + "  ", said(leg), "         "));
    }
    lines.add("  " + side.id() + " side, class " + productClass);
    lines.add("  not visible:");
    SENTENCES.of(notVisible()).forEach(text -> lines.addAll(Columns.wrapped("  - ", text, "    ")));
    return lines;
  }

  private String headline() {
    if (legs.isEmpty()) {
      return "NO ANCHOR LEG FOUND; check the connector and the side, and take the photo so that all"
          + " its legs show and fill the picture, or ask for a single one by --leg";
    }
    return switch (verdict()) {
      case ACCEPTABLE, PROCESS_INDICATOR -> "LEGS ACCEPTABLE as far as a photo shows";
      case UNJUDGED -> "NOT ALL LEGS JUDGED";
      case DEFECT -> "DEFECT";
    };
  }

  private static String said(GradedLeg leg) {
    String measured = VerdictWords.plain(leg.verdict()) + "; " + LegWords.measured(leg);
    String what = LegWords.kinds(leg);
    String why = leg.doubts().isEmpty() ? "" : "; " + SENTENCES.joined(leg.doubts());
    return (what.isEmpty() ? measured : what + ", " + measured) + why;
  }
}
