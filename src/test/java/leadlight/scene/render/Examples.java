package leadlight.scene.render;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.MetalSpec;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.plan.SceneSpec;

/** Scenes for tests. */
public final class Examples {

  static final SceneMix MIX = SceneMix.read(Path.of("models/scene/mix-even.json"));

  private static final CameraSpec.Sensing PLAIN =
      new CameraSpec.Sensing(false, 0.002, 1, 1, 0.15, 0, 1, 0, 0.95);

  private Examples() {}

  /** Aims at (3, -0.5) from 100 mm with 80 px a millimetre, 1000 x 400 px. */
  public static CameraSpec camera(double turn, double tiltX, double tiltY, double k1) {
    return new CameraSpec(
        1000,
        400,
        80,
        3,
        -0.5,
        turn,
        new double[] {tiltX, tiltY},
        100,
        new CameraSpec.Lens(k1, 0.4, 0, 0, 0, 0, 0, 0),
        PLAIN);
  }

  /** A small row of sound joints under a ring lamp. */
  public static SceneSpec sound(int leads) {
    double[] places = new double[leads];
    double[] widths = new double[leads];
    List<JointPlan> joints = new ArrayList<>();
    for (int i = 0; i < leads; i++) {
      places[i] = 0.5 * i;
      widths[i] = 0.3;
      joints.add(joint());
    }
    CameraSpec c = camera(0, 0, 0, 0);
    return new SceneSpec(
        "sound",
        7,
        new PartSpec(null, false, 0.5, places, widths, 1.5, 0.4, 0.01, 0.2, 0.13, 1.0, 0.01),
        new BodySpec(0.3, 1.5, 0.5, 1, Material.BLACK_PLASTIC, -1, 0, 0),
        new BoardSpec(
            Mask.GREEN, Material.GOLD, 0.05, false, 0, 0.15, false, 0, false, 0, List.of()),
        new MetalSpec(Material.TIN, 0.25, 0, 0.12, 0, 0.25, null),
        List.of(new LampSpec(LampSpec.Kind.RING, 55, 8, 0, 0, 1, 1, 1, 1)),
        new CameraSpec(
            240,
            160,
            60,
            0.25 * (leads - 1),
            -0.4,
            0,
            c.tiltRad(),
            100,
            new CameraSpec.Lens(0, 0.3, 0, 0, 0, 0, 0, 0),
            PLAIN),
        joints,
        List.of(),
        List.of());
  }

  public static JointPlan.Fill fill(double pressurePerMm, double climb) {
    return new JointPlan.Fill(true, pressurePerMm, climb, 0.008, 0);
  }

  public static JointPlan joint() {
    return new JointPlan(
        Condition.WETTED,
        fill(-3, 1),
        new JointPlan.Pose(0.015, 0, 0, 0, 0, 0),
        JointPlan.Wetting.WHOLE,
        0,
        false,
        null);
  }

  /** The scene with its first joint changed. */
  public static SceneSpec with(SceneSpec s, JointPlan first, List<Bridge> bridges) {
    List<JointPlan> joints = new ArrayList<>(s.joints());
    joints.set(0, first);
    return with(s, joints, bridges, s.dirt());
  }

  static SceneSpec withDirt(SceneSpec s, List<Dirt> dirt) {
    return with(s, s.joints(), s.bridges(), dirt);
  }

  private static SceneSpec with(
      SceneSpec s, List<JointPlan> joints, List<Bridge> bridges, List<Dirt> dirt) {
    return new SceneSpec(
        s.name(),
        s.seed(),
        s.part(),
        s.body(),
        s.board(),
        s.metal(),
        s.lamps(),
        s.camera(),
        joints,
        bridges,
        dirt);
  }
}
