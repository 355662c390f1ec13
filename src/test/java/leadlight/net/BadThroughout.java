package leadlight.net;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;

/** Makes every joint of a scene bad in one way, each a little differently, as bad rows are. */
enum BadThroughout {
  OPEN("all-open") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return new JointPlan(
          Condition.OPEN,
          solder(0.7 * amount * strip),
          pose(was, 0, 0),
          was.wetting(),
          0,
          false,
          null);
    }
  },
  FLOATING("all-floating") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return new JointPlan(
          Condition.OPEN,
          solder(0.7 * amount * strip),
          pose(was, 0.03 + 0.08 * amount, 0.05 * amount),
          was.wetting(),
          0,
          false,
          null);
    }
  },
  STARVED_AT_TOE("all-starved-toe") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return starved(was, 0.5 + 0.35 * amount, 1);
    }
  },
  STARVED_AT_HEEL("all-starved-heel") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return starved(was, 0, 0.12 + 0.36 * amount);
    }
  },
  MISSING("all-missing") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return new JointPlan(
          Condition.MISSING,
          solder(0.8 * amount * strip),
          new JointPlan.Pose(was.pose().gapMm(), 0, 0, 0, 0, 0),
          was.wetting(),
          0,
          false,
          null);
    }
  },
  BARE_LANDS("bare-lands") {
    @Override
    JointPlan joint(JointPlan was, double amount, double strip) {
      return MISSING.joint(was, amount, strip);
    }

    /** The part was taken off: no body, nor the shadow of one. */
    @Override
    BodySpec body(BodySpec was) {
      return new BodySpec(8, 0.05, 0.04, was.overEndMm(), was.material(), -1, 0, 0);
    }
  };

  /** Far apart in the fractional parts of their multiples, so that no two joints are alike. */
  private static final double GOLDEN = 0.6180339887;

  private final String kind;

  BadThroughout(String kind) {
    this.kind = kind;
  }

  String kind() {
    return kind;
  }

  /**
   * One joint.
   *
   * @param amount 0 to 1
   * @param strip pressure at which solder on a bare land stands as a half cylinder, 1/mm
   */
  abstract JointPlan joint(JointPlan was, double amount, double strip);

  BodySpec body(BodySpec was) {
    return was;
  }

  SceneSpec of(SceneSpec scene, String name, CameraSpec camera) {
    List<JointPlan> joints = new ArrayList<>();
    for (int i = 0; i < scene.joints().size(); i++) {
      double amount = (i + 1) * GOLDEN % 1;
      joints.add(joint(sound(scene.joints().get(i)), amount, 2 / scene.part().landWidthMm()[i]));
    }
    return new SceneSpec(
        name,
        scene.seed(),
        scene.part(),
        body(scene.body()),
        scene.board(),
        scene.metal(),
        scene.lamps(),
        camera,
        joints,
        List.of(),
        scene.dirt());
  }

  /** What was wrong with a joint before does not stay under the fault of the row. */
  private static JointPlan sound(JointPlan was) {
    return new JointPlan(
        Condition.WETTED,
        new JointPlan.Fill(true, Math.min(0, was.fill().pressurePerMm()), 0.85, 0.008, 0),
        new JointPlan.Pose(0.012, 0.4 * was.pose().shiftMm() % 0.02, 0, 0, 0, 0),
        new JointPlan.Wetting(0, 1, 0),
        0,
        false,
        null);
  }

  private static JointPlan.Fill solder(double pressure) {
    return new JointPlan.Fill(true, pressure, 0, 0.008, 0);
  }

  private static JointPlan.Pose pose(JointPlan was, double lift, double toeUp) {
    JointPlan.Pose pose = was.pose();
    return new JointPlan.Pose(
        pose.gapMm(), pose.shiftMm(), pose.skewRad(), lift, toeUp, pose.rollRad());
  }

  private static JointPlan starved(JointPlan was, double from, double to) {
    return new JointPlan(
        Condition.STARVED,
        was.fill(),
        was.pose(),
        new JointPlan.Wetting(from, to, 0),
        0,
        false,
        null);
  }
}
