package leadlight.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Homography;
import leadlight.model.Measure;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Reason;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.Lead;
import leadlight.model.row.RowCandidate;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.text.Messages;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;

/** Scored photos for tests: places by the truth of rendered pictures, verdicts invented. */
public final class Scenes {

  public static final ReportContext CONTEXT = context("en");

  public static ReportContext context(String language) {
    return new ReportContext(
        "0.1.0",
        "0123456789ab",
        new StatedLimits(
            "scenes",
            false,
            "IPC-A-610 table 8-5",
            List.of("read in published sources, partly memory")),
        Messages.of(language));
  }

  private Scenes() {}

  public static Frame picture(String id) {
    return Codec.decode(resource(id + ".jpg")).orElseThrow();
  }

  /** A scene turned and scaled into a picture of another size; close its frame. */
  public record Moved(ScoredPhoto scored, Frame picture) implements AutoCloseable {

    @Override
    public void close() {
      picture.close();
    }
  }

  /** The scene in the middle of a picture of the given size, turned clockwise. */
  public static Moved moved(String id, double angleDeg, int width, int height) {
    JsonNode truth = truth(id);
    double w = truth.get("width").asDouble();
    double h = truth.get("height").asDouble();
    double cos = Math.cos(Math.toRadians(angleDeg));
    double sin = Math.sin(Math.toRadians(angleDeg));
    double scale =
        Math.min(
            width / (w * Math.abs(cos) + h * Math.abs(sin)),
            height / (w * Math.abs(sin) + h * Math.abs(cos)));
    double a = scale * cos;
    double b = scale * sin;
    Homography map =
        new Homography(
            a,
            -b,
            width / 2.0 - a * w / 2 + b * h / 2,
            b,
            a,
            height / 2.0 - b * w / 2 - a * h / 2,
            0,
            0,
            1);
    try (Frame picture = picture(id);
        Canvas canvas = new Canvas(width, height, 0x2f4f3f)) {
      canvas.pasteStraightened(picture, map.inverse(), 0, 0, width, height);
      return new Moved(scored(id, map, width, height), Codec.decode(canvas.png()).orElseThrow());
    }
  }

  /** Verdicts of every kind along the row. */
  public static ScoredPhoto scored(String id) {
    return scored(id, new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1), 0, 0);
  }

  /** The scene of a picture that was moved by a map to another size; 0 leaves the size. */
  static ScoredPhoto scored(String id, Homography moved, int width, int height) {
    JsonNode truth = truth(id);
    List<Lead> leads = leads(truth, moved);
    RowSpec spec =
        RowSpec.plain(
            leads.size(),
            truth.get("pitch_mm").asDouble(),
            OptionalDouble.of(truth.get("lead_width_mm").asDouble()),
            OptionalDouble.empty());
    PhotoInfo photo =
        new PhotoInfo(
            id + ".jpg",
            "ab".repeat(32),
            width == 0 ? truth.get("width").asInt() : width,
            height == 0 ? truth.get("height").asInt() : height,
            "jpeg",
            8,
            1,
            Optional.of("2026-03-04T10:11:12+01:00"));
    List<GradedJoint> joints = new ArrayList<>();
    for (Lead lead : leads) {
      joints.add(graded(lead, truth.get("joints").get(lead.pin() - 1)));
    }
    return photo(
        photo, new Settings(spec, 2, "ipc-a-610", Optional.empty()), found(spec, leads), joints);
  }

  /** The same with two opinions on each joint that differ. */
  static ScoredPhoto read(ScoredPhoto scored) {
    Chances measures = unwetted(0.02);
    Reading reading =
        new Reading(unwetted(0.64), 0.125, false, Optional.of(new Region(-0.5, -0.75, 0.5, 0.25)));
    List<GradedJoint> joints =
        scored.joints().stream()
            .map(
                graded ->
                    new GradedJoint(
                        new Joint(
                            graded.joint().lead(),
                            graded.joint().measures(),
                            graded.joint().evidence(),
                            graded.joint().unfitBecause(),
                            Optional.of(measures),
                            Optional.of(reading)),
                        graded.verdict(),
                        graded.findings(),
                        graded.checks(),
                        graded.doubts(),
                        graded.grounds()))
            .toList();
    return photo(scored.photo(), scored.settings(), scored.row(), joints);
  }

  private static Chances unwetted(double chance) {
    return Chances.of(question -> 0).with(Question.UNWETTED, chance).with(Question.OPEN, 0.5);
  }

  static List<Note> notes(String... sentences) {
    return Stream.of(sentences).<Note>map(NoteOfJoint.Earlier::new).toList();
  }

  public static ScoredPhoto withoutRow(String id) {
    ScoredPhoto whole = scored(id);
    return new ScoredPhoto(
        whole.photo(),
        whole.settings(),
        new RowOutcome.NotFound(new NoteOfRow.NoRow(19), List.of()),
        Optional.empty(),
        List.of(),
        Verdict.UNJUDGED,
        List.of(),
        List.of(new NoteOfPhoto.SoftForPixels(9, 7.5)),
        whole.notVisible(),
        whole.cautions());
  }

  public static ScoredPhoto photo(
      PhotoInfo photo, Settings settings, RowOutcome row, List<GradedJoint> joints) {
    Verdict worst =
        joints.stream().map(GradedJoint::verdict).reduce(Verdict.ACCEPTABLE, Verdict::worse);
    return new ScoredPhoto(
        photo,
        settings,
        row,
        Optional.empty(),
        joints,
        worst,
        List.of(new NoteOfRow.AlikeThroughout()),
        notes("The right third is soft; lay the board flat or close the aperture."),
        notes(
            "wetting under the lead and heel height",
            "a floating lead that looks joined",
            "cracks finer than the picture shows"),
        notes(
            "Unplug the board and take batteries out before you touch a joint; a mains-side"
                + " capacitor can stay charged.",
            "Solder under extraction; wash hands after work with leaded solder.",
            "Follow the local codes; leave mains-side work to licensed people."));
  }

  private static GradedJoint graded(Lead lead, JsonNode joint) {
    List<Finding> findings = new ArrayList<>();
    String condition = joint.get("condition").asText();
    int pin = lead.pin();
    if (joint.path("bridge_to").isInt()) {
      findings.add(
          finding(
              FindingKind.BRIDGE,
              List.of(pin, joint.get("bridge_to").asInt()),
              "metal across the gap over 0.31 mm, contrast 0.82 of the lead tops",
              "meter the two pins; wick the solder off"));
    }
    if (condition.equals("open")) {
      findings.add(
          finding(
              FindingKind.OPEN,
              List.of(pin),
              "step at the toe 0.42 of the lead's brightness, no slope on the land",
              "prod the lead with a wooden pick; re-flow with flux"));
    } else if (condition.equals("insufficient")) {
      findings.add(
          finding(
              FindingKind.INSUFFICIENT,
              List.of(pin),
              "wetted length 0.31 mm +- 0.04 of 0.60 mm needed",
              "add flux and a little solder"));
    } else if (condition.equals("missing-lead")) {
      findings.add(
          finding(
              FindingKind.MISSING_LEAD,
              List.of(pin),
              "no metal above the land",
              "look from aside"));
    }
    if (joint.path("side_overhang_of_lead_width").asDouble() > 0.5) {
      findings.add(
          finding(
              FindingKind.SIDE_OVERHANG,
              List.of(pin),
              "0.130 mm +- 0.008 over the land's edge, limit 0.100 mm",
              "re-seat the part"));
    }
    if (!findings.isEmpty()) {
      return new GradedJoint(
          joint(lead), Verdict.DEFECT, findings, List.of(check()), List.of(), List.of());
    }
    return switch (pin % 8) {
      case 4 ->
          new GradedJoint(
              joint(lead),
              Verdict.PROCESS_INDICATOR,
              List.of(
                  new Finding(
                      FindingKind.EXCESS,
                      List.of(pin),
                      Verdict.PROCESS_INDICATOR,
                      0.8,
                      OptionalDouble.empty(),
                      Optional.empty(),
                      List.of(new Reason("lead_edges", 0.12, 0.4, 2)),
                      "IPC-A-610 excess solder (from memory)",
                      "")),
              List.of(),
              List.of(),
              List.of(new NoteOfJoint.LeadSeen(0.001)));
      case 7 ->
          new GradedJoint(
              joint(lead),
              Verdict.UNJUDGED,
              List.of(),
              List.of(),
              List.of(new Doubt.Glare(pin == 7 ? 0.42 : 0.5)),
              List.of());
      default ->
          new GradedJoint(
              joint(lead),
              Verdict.ACCEPTABLE,
              List.of(),
              List.of(),
              List.of(),
              List.of(
                  new NoteOfJoint.LeadSeen(0.001),
                  new NoteOfJoint.FilletSeen(OptionalDouble.of(0.01), OptionalDouble.empty()),
                  new NoteOfJoint.RoomForFillet(0.2)));
    };
  }

  private static Finding finding(
      FindingKind kind, List<Integer> pins, String evidence, String settleBy) {
    return new Finding(
        kind,
        pins,
        Verdict.DEFECT,
        0.97,
        kind == FindingKind.OPEN ? OptionalDouble.of(0.8) : OptionalDouble.empty(),
        Optional.of(new NoteOfJoint.Earlier(evidence)),
        List.of(),
        "IPC-A-610 table 8-5, read in published sources",
        settleBy);
  }

  private static LimitCheck check() {
    return new LimitCheck(
        Measure.SIDE_OVERHANG, new Quantity(0.13, 0.008, Unit.MM), 0.1, true, 0.001, "clause");
  }

  private static Joint joint(Lead lead) {
    return new Joint(
        lead,
        Map.of(
            Measure.SIDE_OVERHANG, new Quantity(-0.0123, 0.004, Unit.MM),
            Measure.LEAD_ANGLE, new Quantity(1.5, 0.3, Unit.DEGREE),
            Measure.BURNT_OUT, new Quantity(0.02, 0.001, Unit.SHARE)),
        List.of(
            new Evidence(
                FindingKind.OPEN,
                0.02,
                0,
                Optional.empty(),
                List.of(new Reason("toe_step", 0.05, 0.1, 0.2)))),
        Optional.empty());
  }

  private static RowOutcome.Found found(RowSpec spec, List<Lead> leads) {
    Lead first = leads.get(0);
    Lead last = leads.get(leads.size() - 1);
    double ux = (last.landToePx().x() - first.landToePx().x()) / spec.spanMm();
    double uy = (last.landToePx().y() - first.landToePx().y()) / spec.spanMm();
    double scale = Math.hypot(ux, uy);
    PointPx toe = first.toePx();
    Homography map = new Homography(ux, -uy, toe.x(), uy, ux, toe.y(), 0, 0, 1);
    return new RowOutcome.Found(
        map,
        leads,
        scale * spec.pitchMm(),
        Math.atan2(uy, ux),
        scale,
        BodySide.towards(uy, -ux),
        0.97,
        0.02,
        List.of(
            new RowCandidate(first.toePx(), last.toePx(), scale * spec.pitchMm(), 0.91, "chosen"),
            new RowCandidate(
                first.heelPx(), last.heelPx(), 2 * scale * spec.pitchMm(), 0.4, "double pitch")));
  }

  private static List<Lead> leads(JsonNode truth, Homography moved) {
    List<Lead> leads = new ArrayList<>();
    for (JsonNode joint : truth.get("joints")) {
      leads.add(
          new Lead(
              joint.get("pin").asInt(),
              point(joint.get("toe_px"), moved),
              point(joint.get("heel_px"), moved),
              point(joint.get("land_toe_px"), moved),
              point(joint.get("land_heel_px"), moved),
              0.9,
              0.1,
              0.2));
    }
    return leads;
  }

  private static PointPx point(JsonNode xy, Homography moved) {
    return moved.map(xy.get(0).asDouble(), xy.get(1).asDouble());
  }

  private static JsonNode truth(String id) {
    try {
      return new ObjectMapper().readTree(resource(id + ".truth.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] resource(String name) {
    try (InputStream in = Scenes.class.getResourceAsStream("/leadlight/report/" + name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
