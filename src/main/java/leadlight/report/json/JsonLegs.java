package leadlight.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;
import leadlight.text.Sentences;

/** Anchor legs as JSON: of one photo, and of a connector. */
public final class JsonLegs {

  private static final int DECIMALS = 4;

  private final JsonGenerator json;
  private final JsonFields fields;
  private final JsonRemarks remarks;
  private final Sentences sentences;

  public JsonLegs(JsonGenerator json, Sentences sentences) {
    this.json = json;
    this.fields = new JsonFields(json);
    this.remarks = new JsonRemarks(json, sentences);
    this.sentences = sentences;
  }

  /** {@code "legs"} of a connector: the photos, and one entry a leg. */
  void set(LegSet set) throws IOException {
    json.writeObjectFieldStart("legs");
    json.writeArrayFieldStart("photos");
    for (LegSet.Shown photo : set.photos()) {
      json.writeStartObject();
      fields.text("file", photo.photo().file());
      fields.text("sha256", photo.photo().sha256());
      fields.text("side", photo.side().id());
      fields.whole("found", photo.legs().size());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("each");
    for (LegSet.Joined leg : set.legs()) {
      joined(leg);
    }
    json.writeEndArray();
    fields.text("verdict", set.verdict().id());
    json.writeEndObject();
  }

  private void joined(LegSet.Joined leg) throws IOException {
    json.writeStartObject();
    if (leg.number().isPresent()) {
      fields.whole("leg", leg.number().getAsInt());
    } else {
      json.writeNullField("leg");
    }
    fields.text("verdict", leg.verdict().id());
    json.writeArrayFieldStart("seen");
    for (LegSet.Seen seen : leg.seen()) {
      json.writeStartObject();
      fields.text("file", seen.file());
      fields.text("side", seen.side().id());
      body(seen.leg());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (!leg.doubts().isEmpty()) {
      fields.text("unjudged_because", sentences.joined(leg.doubts()));
    }
    remarks.list("doubts", leg.doubts());
    json.writeEndObject();
  }

  /** One leg of one photo, as an object of its own. */
  public void leg(GradedLeg leg) throws IOException {
    json.writeStartObject();
    if (leg.number().isPresent()) {
      fields.whole("leg", leg.number().getAsInt());
    } else {
      json.writeNullField("leg");
    }
    body(leg);
    json.writeEndObject();
  }

  private void body(GradedLeg leg) throws IOException {
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
    quantity("wetted_deg", leg.wetted());
    quantity("land_covered", leg.covered());
    quantity("hole_open", leg.open());
    json.writeEndObject();
    if (!leg.doubts().isEmpty()) {
      fields.text("unjudged_because", sentences.joined(leg.doubts()));
    }
    remarks.list("doubts", leg.doubts());
  }

  private void quantity(String name, Quantity quantity) throws IOException {
    json.writeObjectFieldStart(name);
    fields.number("value", quantity.value(), DECIMALS);
    fields.number("u", quantity.u(), DECIMALS);
    json.writeEndObject();
  }
}
