package leadlight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import leadlight.model.Evidence;
import leadlight.model.FaultChances;
import leadlight.model.Finding;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Lead;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Reading;
import leadlight.model.Region;
import leadlight.model.RowSpec;

/** One joint as JSON. */
final class JsonJoint {

  private static final int DECIMALS = 5;

  private final JsonGenerator json;
  private final JsonFields fields;
  private final RowSpec spec;

  JsonJoint(JsonGenerator json, RowSpec spec) {
    this.json = json;
    this.fields = new JsonFields(json);
    this.spec = spec;
  }

  void write(GradedJoint graded) throws IOException {
    json.writeStartObject();
    fields.whole("pin", graded.pin());
    fields.text("name", spec.lands().get(graded.pin() - 1).name());
    lead(graded.joint().lead());
    fields.text("verdict", graded.verdict().id());
    findings(graded.findings());
    measures(graded);
    evidence(graded.joint().evidence());
    opinions(graded.joint());
    if (graded.unjudgedBecause().isPresent()) {
      fields.text("unjudged_because", graded.unjudgedBecause().get());
    }
    json.writeEndObject();
  }

  private void lead(Lead lead) throws IOException {
    fields.point("toe_px", lead.toePx());
    fields.point("heel_px", lead.heelPx());
    fields.point("land_toe_px", lead.landToePx());
    fields.point("land_heel_px", lead.landHeelPx());
    fields.number("match", lead.match(), 4);
    fields.number("u_across_px", lead.uAcrossPx(), 4);
    fields.number("u_along_px", lead.uAlongPx(), 4);
  }

  private void findings(List<Finding> findings) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : findings) {
      json.writeStartObject();
      fields.text("kind", finding.kind().id());
      fields.pins("pins", finding.pins());
      fields.text("verdict", finding.verdict().id());
      fields.number("probability", finding.probability(), 4);
      fields.text("evidence", finding.evidence());
      fields.text("clause", finding.clause());
      if (!finding.settleBy().isEmpty()) {
        fields.text("settle_by", finding.settleBy());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void measures(GradedJoint graded) throws IOException {
    json.writeObjectFieldStart("measures");
    for (Measure measure : Measure.values()) {
      Quantity quantity = graded.joint().measures().get(measure);
      if (quantity != null) {
        json.writeObjectFieldStart(measure.id());
        fields.number("value", quantity.value(), DECIMALS);
        fields.number("u", quantity.u(), DECIMALS);
        fields.text("unit", quantity.unit().symbol());
        json.writeEndObject();
      }
    }
    json.writeEndObject();
  }

  private void evidence(List<Evidence> evidence) throws IOException {
    json.writeArrayFieldStart("evidence");
    for (Evidence each : evidence) {
      json.writeStartObject();
      fields.text("kind", each.kind().id());
      fields.number("probability", each.probability(), 4);
      if (each.neighbourPin() > 0) {
        fields.whole("neighbour_pin", each.neighbourPin());
      }
      fields.text("words", each.words());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void opinions(Joint joint) throws IOException {
    if (joint.byReader().isEmpty()) {
      return;
    }
    Reading reading = joint.byReader().get();
    json.writeObjectFieldStart("opinions");
    if (joint.byMeasures().isPresent()) {
      chances("measures", joint.byMeasures().get());
    }
    chances("reader", reading.chances());
    fields.number("strangeness", reading.strangeness(), 4);
    if (reading.moved().isPresent()) {
      Region moved = reading.moved().get();
      json.writeObjectFieldStart("reader_moved_by");
      fields.number("x0_pitch", moved.x0(), 3);
      fields.number("y0_pitch", moved.y0(), 3);
      fields.number("x1_pitch", moved.x1(), 3);
      fields.number("y1_pitch", moved.y1(), 3);
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void chances(String whose, FaultChances chances) throws IOException {
    json.writeObjectFieldStart(whose);
    fields.number("missing_lead", chances.missing(), 4);
    fields.number("no_fillet", chances.unwetted(), 4);
    fields.number("open_rather_than_insufficient", chances.open(), 4);
    fields.number("excess", chances.excess(), 4);
    fields.number("bridge_to_pin_before", chances.bridgeBefore(), 4);
    fields.number("bridge_to_next_pin", chances.bridgeAfter(), 4);
    fields.number("solder_ball", chances.ball(), 4);
    fields.number("overhang_above_quarter", chances.overQuarter(), 4);
    fields.number("overhang_above_half", chances.overHalf(), 4);
    json.writeEndObject();
  }
}
