package leadlight.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import leadlight.model.Opinions;
import leadlight.model.result.Besides;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowCandidate;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowOutcome;
import leadlight.report.words.ReportContext;
import leadlight.report.words.Words;
import leadlight.text.Sentences;

/**
 * A scored photo as JSON by {@code models/schema/report.schema.json}. Streamed: binding whole
 * objects costs a tenth of a second at start. No time of the run is in it, so that the same photo
 * gives the same bytes.
 */
public final class JsonReport {

  /** With what the name of this and of every older version begins. */
  public static final String ANY_SCHEMA = "leadlight-report-";

  static final String SCHEMA = ANY_SCHEMA + "2";
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private final ReportContext context;
  private final JsonGenerator json;
  private final JsonFields fields;
  private final Sentences sentences = Sentences.english();
  private final JsonRemarks remarks;

  private JsonReport(ReportContext context, JsonGenerator json) {
    this.context = context;
    this.json = json;
    this.fields = new JsonFields(json);
    this.remarks = new JsonRemarks(json, sentences);
  }

  static byte[] bytes(ScoredPhoto scored, ReportContext context) {
    return bytes(scored, Besides.NONE, context);
  }

  public static byte[] bytes(ScoredPhoto scored, Besides besides, ReportContext context) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 15);
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
      new JsonReport(context, json).report(scored, besides);
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private void report(ScoredPhoto scored, Besides besides) throws IOException {
    json.writeStartObject();
    fields.text("schema", SCHEMA);
    json.writeObjectFieldStart("tool");
    fields.text("name", "Leadlight");
    fields.text("version", context.toolVersion());
    json.writeEndObject();
    photo(scored.photo());
    JsonBesides others = new JsonBesides(json, sentences, besides);
    others.photos(scored.photo());
    settings(scored.settings());
    connector(scored.settings());
    fields.whole("class", scored.settings().productClass());
    row(scored);
    json.writeArrayFieldStart("joints");
    JsonJoint joint = new JsonJoint(json, scored.settings().row(), sentences);
    for (var graded : scored.joints()) {
      joint.write(graded, others);
    }
    json.writeEndArray();
    if (besides.legs().isPresent()) {
      new JsonLegs(json, sentences).set(besides.legs().get());
    }
    fields.text("verdict", scored.verdict().id());
    remarks.sentencesAndCodes("fitness", scored.fitness());
    remarks.sentencesAndCodes("not_visible", scored.notVisible());
    remarks.sentencesAndCodes("cautions", scored.cautions());
    fields.text("certificate", Words.NO_CERTIFICATE);
    json.writeEndObject();
  }

  private void photo(PhotoInfo photo) throws IOException {
    json.writeObjectFieldStart("photo");
    fields.text("file", photo.file());
    fields.text("sha256", photo.sha256());
    fields.whole("width_px", photo.widthPx());
    fields.whole("height_px", photo.heightPx());
    fields.text("format", photo.format());
    fields.whole("bits_per_channel", photo.bitsPerChannel());
    fields.whole("exif_orientation", photo.exifOrientation());
    if (photo.takenAt().isPresent()) {
      fields.text("taken_at", photo.takenAt().get());
    }
    json.writeEndObject();
  }

  private void settings(Settings settings) throws IOException {
    json.writeObjectFieldStart("settings");
    json.writeObjectFieldStart("acceptance");
    fields.text("set", settings.acceptanceSet());
    fields.text("source", context.limits().name());
    fields.text("provenance", String.join(" ", context.limits().notes()));
    json.writeEndObject();
    fields.text("opinions", settings.opinions().id());
    if (settings.opinions() != Opinions.MEASURES) {
      fields.text("reader", context.reader());
    }
    if (settings.row().leadWidthMm().isPresent()) {
      fields.number("lead_width_mm", settings.row().leadWidthMm().getAsDouble(), 5);
    }
    if (settings.hint().isPresent()) {
      hint(settings.hint().get());
    }
    json.writeEndObject();
  }

  private void hint(RowHint hint) throws IOException {
    if (hint.box().isPresent()) {
      RowHint.Box box = hint.box().get();
      json.writeObjectFieldStart("pointed_at");
      fields.number("x_px", box.x(), 3);
      fields.number("y_px", box.y(), 3);
      fields.number("width_px", box.widthPx(), 3);
      fields.number("height_px", box.heightPx(), 3);
      json.writeEndObject();
    }
    if (hint.body().isPresent()) {
      fields.text("body_told", hint.body().get().id());
    }
  }

  private void connector(Settings settings) throws IOException {
    json.writeObjectFieldStart("connector");
    fields.text("id", settings.row().connectorId());
    fields.whole("leads", settings.row().leads());
    fields.number("pitch_mm", settings.row().pitchMm(), 5);
    json.writeBooleanField("pin_1_right_of_body_above", settings.row().pin1Reversed());
    json.writeEndObject();
  }

  private void row(ScoredPhoto scored) throws IOException {
    RowOutcome row = scored.row();
    json.writeObjectFieldStart("row");
    json.writeBooleanField("found", row instanceof RowOutcome.Found);
    if (row instanceof RowOutcome.Found found) {
      fields.number("pitch_px", found.pitchPx(), 4);
      fields.number("angle_deg", Math.toDegrees(found.angleRad()), 4);
      fields.number("scale_px_per_mm", found.scalePxPerMm(), 4);
      fields.text("body_side", found.bodySide().id());
      fields.number("confidence", found.confidence(), 4);
      fields.map("mm_to_px", found.mmToPx().rowMajor());
    } else if (row instanceof RowOutcome.NotFound none) {
      fields.text("reason", sentences.of(none.reason()));
      remarks.code("note", none.reason());
    }
    remarks.list("notes", scored.rowNotes());
    considered(row.considered());
    json.writeEndObject();
  }

  private void considered(List<RowCandidate> considered) throws IOException {
    json.writeArrayFieldStart("considered");
    for (RowCandidate candidate : considered) {
      json.writeStartObject();
      fields.point("first_px", candidate.firstPx());
      fields.point("last_px", candidate.lastPx());
      fields.number("pitch_px", candidate.pitchPx(), 4);
      fields.number("score", candidate.score(), 4);
      fields.text("why", candidate.why());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
