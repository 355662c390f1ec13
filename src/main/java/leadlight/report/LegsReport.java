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
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.GradedLeg;
import leadlight.model.Note;
import leadlight.model.PhotoInfo;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Verdict;
import leadlight.text.Sentences;

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
  private static final int DECIMALS = 4;

  /** Copies the list. */
  public LegsReport {
    legs = List.copyOf(legs);
  }

  /** The worst of the legs; unjudged if none was found. */
  public Verdict verdict() {
    return legs.stream().map(GradedLeg::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED);
  }

  private static List<Note> notVisible() {
    return List.of(new Note.HoleFill(), new Note.UnderLump(), new Note.OtherSide());
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
    for (GradedLeg leg : legs) {
      leg(json, fields, remarks, leg);
    }
    json.writeEndArray();
    fields.text("verdict", verdict().id());
    remarks.sentencesAndCodes("not_visible", notVisible());
    fields.text("certificate", Words.NO_CERTIFICATE);
    json.writeEndObject();
  }

  private static void leg(JsonGenerator json, JsonFields fields, JsonRemarks remarks, GradedLeg leg)
      throws IOException {
    json.writeStartObject();
    if (leg.number().isPresent()) {
      fields.whole("leg", leg.number().getAsInt());
    } else {
      json.writeNullField("leg");
    }
    fields.point("centre_px", leg.centre());
    json.writeArrayFieldStart("land_px");
    for (PointPx point : leg.outline()) {
      json.writeStartArray();
      json.writeNumber(Math.round(point.x() * 10) / 10.0);
      json.writeNumber(Math.round(point.y() * 10) / 10.0);
      json.writeEndArray();
    }
    json.writeEndArray();
    fields.number("match", leg.match(), DECIMALS);
    fields.text("verdict", leg.verdict().id());
    json.writeArrayFieldStart("findings");
    for (FindingKind kind : leg.findings()) {
      json.writeStartObject();
      fields.text("kind", kind.id());
      fields.texts("clauses", leg.clauses());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("measures");
    quantity(json, fields, "wetted_deg", leg.wetted());
    quantity(json, fields, "land_covered", leg.covered());
    quantity(json, fields, "hole_open", leg.open());
    json.writeEndObject();
    if (!leg.doubts().isEmpty()) {
      fields.text("unjudged_because", SENTENCES.joined(leg.doubts()));
    }
    remarks.list("doubts", leg.doubts());
    json.writeEndObject();
  }

  private static void quantity(
      JsonGenerator json, JsonFields fields, String name, Quantity quantity) throws IOException {
    json.writeObjectFieldStart(name);
    fields.number("value", quantity.value(), DECIMALS);
    fields.number("u", quantity.u(), DECIMALS);
    json.writeEndObject();
  }

  /** The lines, a leg each in their order, at most 80 characters wide but for the file's name. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(photo.file() + ": " + headline());
    for (GradedLeg leg : legs) {
      lines.addAll(Columns.wrapped("  " + name(leg) + "  ", said(leg), "         "));
    }
    lines.add("  " + side.id() + " side, class " + productClass);
    lines.add("  not visible:");
    SENTENCES.of(notVisible()).forEach(text -> lines.addAll(Columns.wrapped("  - ", text, "    ")));
    return lines;
  }

  private String headline() {
    if (legs.isEmpty()) {
      return "NO ANCHOR LEG FOUND; check the connector and the side, or take the photo so that"
          + " the lands fill the picture";
    }
    return switch (verdict()) {
      case ACCEPTABLE, PROCESS_INDICATOR -> "LEGS ACCEPTABLE as far as a photo shows";
      case UNJUDGED -> "NOT ALL LEGS JUDGED";
      case DEFECT -> "DEFECT";
    };
  }

  private static String name(GradedLeg leg) {
    return leg.number().isPresent()
        ? "leg " + leg.number().getAsInt()
        : String.format(Locale.ROOT, "leg at %.0f, %.0f", leg.centre().x(), leg.centre().y());
  }

  private static String said(GradedLeg leg) {
    String measured =
        String.format(
            Locale.ROOT,
            "%s; solder meets the leg over %.0f degrees (u %.0f), covers %.0f %% of the land",
            Words.verdict(leg.verdict()),
            leg.wetted().value(),
            leg.wetted().u(),
            100 * leg.covered().value());
    String what = leg.findings().stream().map(Words::kind).collect(Collectors.joining(", "));
    String why = leg.doubts().isEmpty() ? "" : "; " + SENTENCES.joined(leg.doubts());
    return (what.isEmpty() ? measured : what + ", " + measured) + why;
  }
}
