package leadlight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.remark.Note;
import leadlight.model.result.Nudge;
import leadlight.model.result.Nudge.Motion;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.json.JsonFields;
import leadlight.report.json.JsonRemarks;
import leadlight.report.words.Columns;
import leadlight.report.words.ReportContext;
import leadlight.report.words.Words;
import leadlight.text.Sentences;

/** What a nudge showed, as JSON and as lines for the terminal. */
public final class NudgeReport {

  private static final String SCHEMA = "leadlight-nudge-1";
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
  private static final Sentences SENTENCES = Sentences.english();

  private NudgeReport() {}

  /** The JSON report, UTF-8. */
  public static byte[] json(ScoredPhoto rest, Nudge nudge, ReportContext context) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
      write(json, rest, nudge, context);
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void write(
      JsonGenerator json, ScoredPhoto rest, Nudge nudge, ReportContext context) throws IOException {
    JsonFields fields = new JsonFields(json);
    json.writeStartObject();
    fields.text("schema", SCHEMA);
    json.writeObjectFieldStart("tool");
    fields.text("name", "Leadlight");
    fields.text("version", context.toolVersion());
    json.writeEndObject();
    json.writeObjectFieldStart("rest");
    fields.text("file", rest.photo().file());
    fields.text("sha256", rest.photo().sha256());
    json.writeEndObject();
    json.writeArrayFieldStart("photos");
    for (Nudge.Pushed photo : nudge.photos()) {
      photo(json, fields, photo);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("joints");
    for (Nudge.Moved lead : nudge.leads()) {
      joint(json, fields, lead);
    }
    json.writeEndArray();
    fields.pins("still_to_push", toPush(nudge));
    json.writeEndObject();
  }

  private static void photo(JsonGenerator json, JsonFields fields, Nudge.Pushed photo)
      throws IOException {
    json.writeStartObject();
    fields.text("file", photo.file());
    fields.text("sha256", photo.sha256());
    if (photo.touchedPin().isPresent()) {
      fields.whole("touched_pin", photo.touchedPin().getAsInt());
    } else {
      json.writeNullField("touched_pin");
    }
    if (photo.tipPx().isPresent()) {
      fields.point("tip_px", photo.tipPx().get());
    }
    reason(json, photo.reason());
    json.writeEndObject();
  }

  private static void joint(JsonGenerator json, JsonFields fields, Nudge.Moved lead)
      throws IOException {
    json.writeStartObject();
    fields.whole("pin", lead.pin());
    fields.text("motion", lead.motion().id());
    if (lead.shiftUm().isPresent()) {
      json.writeObjectFieldStart("shift_um");
      // Towards pin N positive in the model; how far, here.
      fields.number("value", Math.abs(lead.shiftUm().getAsDouble()), 1);
      fields.number("u", lead.uUm().orElse(0), 1);
      json.writeEndObject();
      fields.text(
          "direction", lead.shiftUm().getAsDouble() < 0 ? "towards pin 1" : "towards the last pin");
    }
    if (lead.smallestSeenUm().isPresent()) {
      fields.number("smallest_seen_um", lead.smallestSeenUm().getAsDouble(), 1);
    }
    if (lead.photo().isPresent()) {
      fields.text("photo", lead.photo().get());
    }
    reason(json, lead.reason());
    json.writeEndObject();
  }

  private static void reason(JsonGenerator json, Optional<Note> why) throws IOException {
    if (why.isPresent()) {
      new JsonRemarks(json, SENTENCES).code("reason", why.get());
      json.writeStringField("reason_sentence", SENTENCES.of(why.get()));
    }
  }

  /** Leads that nothing is known of yet: nobody touched them, or it could not be told. */
  static List<Integer> toPush(Nudge nudge) {
    return nudge.leads().stream()
        .filter(l -> l.motion() == Motion.NOT_TOUCHED || l.motion() == Motion.CANNOT_TELL)
        .map(Nudge.Moved::pin)
        .toList();
  }

  /** What was seen, in lines of at most 80 characters. */
  public static List<String> lines(Nudge nudge) {
    List<String> lines = new ArrayList<>();
    for (Motion motion : List.of(Motion.MOVES, Motion.CANNOT_TELL, Motion.FIRM)) {
      for (Nudge.Moved lead : nudge.leads()) {
        if (lead.motion() == motion) {
          lines.addAll(
              Columns.wrapped(
                  String.format(Locale.ROOT, "  %7d  %-11s  ", lead.pin(), motion.id()),
                  said(lead),
                  " ".repeat(24)));
        }
      }
    }
    for (Nudge.Pushed photo : nudge.photos()) {
      photo
          .reason()
          .ifPresent(
              why ->
                  lines.addAll(
                      Columns.wrapped("  " + photo.file() + ": ", SENTENCES.of(why), "    ")));
    }
    List<Integer> rest = toPush(nudge);
    if (!rest.isEmpty()) {
      lines.addAll(Columns.wrapped("  still to push: ", Words.pins(rest), "    "));
    }
    return lines;
  }

  private static String said(Nudge.Moved lead) {
    String shift = um(lead.shiftUm()) + " um (u " + um(lead.uUm()) + ")";
    return switch (lead.motion()) {
      case MOVES -> "by " + shift + " in " + lead.photo().orElse("");
      case FIRM -> "to " + um(reach(lead)) + " um in " + lead.photo().orElse("");
      default -> shift + ": " + lead.reason().map(SENTENCES::of).orElse("");
    };
  }

  private static OptionalDouble reach(Nudge.Moved lead) {
    return OptionalDouble.of(
        Math.abs(lead.shiftUm().orElse(0)) + lead.smallestSeenUm().orElse(0) / 2);
  }

  private static String um(OptionalDouble value) {
    return String.format(Locale.ROOT, "%.0f", Math.abs(value.orElse(0)));
  }
}
