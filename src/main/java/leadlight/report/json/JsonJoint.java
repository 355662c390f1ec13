package leadlight.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import leadlight.text.Sentences;

/** One joint as JSON. */
final class JsonJoint {

  private static final int DECIMALS = 5;

  private final JsonGenerator json;
  private final JsonFields fields;
  private final RowSpec spec;
  private final Sentences sentences;
  private final JsonRemarks remarks;

  JsonJoint(JsonGenerator json, RowSpec spec, Sentences sentences) {
    this.json = json;
    this.fields = new JsonFields(json);
    this.spec = spec;
    this.sentences = sentences;
    this.remarks = new JsonRemarks(json, sentences);
  }

  void write(GradedJoint graded, JsonBesides others) throws IOException {
    json.writeStartObject();
    fields.whole("pin", graded.pin());
    fields.text("name", spec.lands().get(graded.pin() - 1).name());
    lead(graded.joint().lead());
    fields.text("verdict", graded.verdict().id());
    findings(graded.findings());
    measures(graded);
    evidence(graded.joint().evidence());
    opinions(graded.joint());
    checks(graded.checks());
    if (!graded.doubts().isEmpty()) {
      fields.text("unjudged_because", sentences.joined(graded.doubts()));
    }
    remarks.list("doubts", graded.doubts());
    remarks.list("grounds", graded.grounds());
    others.joint(graded.pin());
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
      if (finding.share().isPresent()) {
        fields.number("share", finding.share().getAsDouble(), 4);
      }
      fields.text("evidence", sentences.evidence(finding));
      if (finding.measured().isPresent()) {
        remarks.code("measured", finding.measured().get());
      }
      fields.text("clause", finding.clause());
      fields.text("settle_by", sentences.settle(finding));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void checks(List<LimitCheck> checks) throws IOException {
    json.writeArrayFieldStart("checks");
    for (LimitCheck check : checks) {
      json.writeStartObject();
      fields.text("measure", check.measure().id());
      fields.number("value", check.measured().value(), DECIMALS);
      fields.number("u", check.measured().u(), DECIMALS);
      fields.number("limit", check.limit(), DECIMALS);
      fields.text("bound", check.atMost() ? "upper" : "lower");
      fields.number("kept_probability", check.kept(), 4);
      fields.text("clause", check.clause());
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
      fields.text("words", sentences.evidence(each));
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

  private void chances(String whose, Chances chances) throws IOException {
    json.writeObjectFieldStart(whose);
    for (Map.Entry<Question, Double> answer : chances.answers().entrySet()) {
      fields.number(answer.getKey().id(), answer.getValue(), 4);
    }
    json.writeEndObject();
  }
}
