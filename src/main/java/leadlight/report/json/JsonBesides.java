package leadlight.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import leadlight.model.remark.Note;
import leadlight.model.result.Besides;
import leadlight.model.result.PhotoInfo;
import leadlight.text.Sentences;

/** What other photos had to do with a report, as JSON; nothing if there were none. */
final class JsonBesides {

  private final JsonGenerator json;
  private final JsonFields fields;
  private final Sentences sentences;
  private final JsonRemarks remarks;
  private final Besides besides;

  JsonBesides(JsonGenerator json, Sentences sentences, Besides besides) {
    this.json = json;
    this.fields = new JsonFields(json);
    this.sentences = sentences;
    this.remarks = new JsonRemarks(json, sentences);
    this.besides = besides;
  }

  /** {@code "photos"} of joined ones, {@code "placed"} of the one before soldering. */
  void photos(PhotoInfo first) throws IOException {
    if (!besides.seenIn().isEmpty()) {
      json.writeArrayFieldStart("photos");
      json.writeStartObject();
      fields.text("file", first.file());
      fields.text("sha256", first.sha256());
      fields.text("role", "first");
      json.writeEndObject();
      for (Besides.Other other : besides.photos()) {
        json.writeStartObject();
        other(other);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    for (Besides.Other other : besides.photos()) {
      if (other.role() == Besides.Role.PLACED) {
        json.writeObjectFieldStart("placed");
        other(other);
        json.writeEndObject();
      }
    }
  }

  private void other(Besides.Other other) throws IOException {
    fields.text("file", other.file());
    fields.text("sha256", other.sha256());
    if (other.role() != Besides.Role.PLACED) {
      String role = other.role() == Besides.Role.BURST ? "burst" : "same row";
      fields.text("role", other.refused().isPresent() ? "refused" : role);
    }
    if (other.refused().isPresent()) {
      reason(other.refused().get());
    }
  }

  private void reason(Note why) throws IOException {
    remarks.code("reason", why);
    fields.text("reason_sentence", sentences.of(why));
  }

  /** {@code "seen_in"} and {@code "change"} of a joint. */
  void joint(int pin) throws IOException {
    if (!besides.seenIn().isEmpty()) {
      fields.texts("seen_in", besides.seenIn().get(pin - 1));
    }
    if (!besides.changes().isEmpty()) {
      Besides.Change change = besides.changes().get(pin - 1);
      json.writeObjectFieldStart("change");
      if (change.soldered().isPresent()) {
        fields.number("soldered", change.soldered().getAsDouble(), 4);
      } else {
        json.writeNullField("soldered");
      }
      if (change.reason().isPresent()) {
        reason(change.reason().get());
      }
      json.writeEndObject();
    }
  }
}
