package leadlight.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;
import leadlight.trial.truth.TruthRow;

/** Small rows with truth: pitch 40 px, body above, toes at y = 100, lands from 60 to 110. */
public final class Truths {

  public static final double PITCH_PX = 40;

  private Truths() {}

  public static PhotoTruth row(JointTruth... joints) {
    return new PhotoTruth(
        "row.png",
        Optional.empty(),
        joints.length,
        0.5,
        IntStream.range(0, joints.length).mapToObj(i -> 0.5 * i).toList(),
        0.2,
        0.625,
        0.125,
        "ring",
        "green",
        1,
        0,
        new PointPx(0, -10),
        List.of(joints));
  }

  public static JointTruth joint(int pin, TrueClass class2, String... findings) {
    double x = 50 + PITCH_PX * (pin - 1);
    return new JointTruth(
        pin,
        Optional.of(new PointPx(x, 100)),
        Optional.of(new PointPx(x, 70)),
        new PointPx(x, 110),
        new PointPx(x, 60),
        findings.length == 0 ? "wetted" : findings[0],
        class2,
        List.of(findings),
        OptionalDouble.of(0),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty());
  }

  public static JointTruth missing(int pin) {
    JointTruth there = joint(pin, TrueClass.DEFECT, "missing-lead");
    return new JointTruth(
        pin,
        Optional.empty(),
        Optional.empty(),
        there.landToePx(),
        there.landHeelPx(),
        "missing-lead",
        TrueClass.DEFECT,
        there.findings(),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty());
  }

  /** An opinion with its toe moved by (dx, dy) from the true one, uncertain by 1 px. */
  public static GradedJoint opinion(
      JointTruth truth, Verdict verdict, double dx, double dy, FindingKind... kinds) {
    PointPx toe = truth.toePx().orElse(truth.landToePx());
    Lead lead =
        new Lead(
            truth.pin(),
            new PointPx(toe.x() + dx, toe.y() + dy),
            new PointPx(toe.x() + dx, toe.y() - 30 + dy),
            truth.landToePx(),
            truth.landHeelPx(),
            1,
            1,
            1);
    List<Finding> findings = new ArrayList<>();
    for (FindingKind kind : kinds) {
      findings.add(
          new Finding(
              kind,
              List.of(truth.pin()),
              verdict,
              1,
              OptionalDouble.empty(),
              Optional.empty(),
              List.of(),
              "",
              ""));
    }
    Joint joint = new Joint(lead, Map.of(), List.of(), Optional.empty());
    return new GradedJoint(
        joint,
        verdict,
        findings,
        List.of(),
        verdict == Verdict.UNJUDGED ? List.of(new Doubt.Glare(0.5)) : List.of(),
        List.of());
  }

  /** A joint with its lead and its land moved along the row. */
  public static GradedJoint moved(JointTruth truth, Verdict verdict, double dx) {
    PointPx land = new PointPx(truth.landToePx().x() + dx, truth.landToePx().y());
    PointPx heel = new PointPx(truth.landHeelPx().x() + dx, truth.landHeelPx().y());
    Lead lead = new Lead(truth.pin(), land, heel, land, heel, 1, 1, 1);
    return new GradedJoint(
        new Joint(lead, Map.of(), List.of(), Optional.empty()),
        verdict,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  public static ScoredPhoto scored(PhotoTruth truth, List<GradedJoint> joints) {
    return scored(truth, TruthRow.of(truth), joints);
  }

  public static ScoredPhoto notFound(PhotoTruth truth) {
    return scored(
        truth, new RowOutcome.NotFound(new NoteOfRow.NoRow(truth.leads()), List.of()), List.of());
  }

  static ScoredPhoto scored(PhotoTruth truth, RowOutcome row, List<GradedJoint> joints) {
    RowSpec spec =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    return new ScoredPhoto(
        new PhotoInfo("row.png", "", 400, 200, "png", 8, 1, Optional.empty()),
        new Settings(spec, 2, "any", Optional.empty()),
        row,
        Optional.empty(),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        List.of(),
        List.of(),
        List.of(new NoteOfJoint.Earlier("the rear")),
        List.of());
  }
}
