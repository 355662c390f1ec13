package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.JointSampler;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.SceneSpec;

/**
 * Pairs of scenes: a row as it was set down, before any iron, and the same row after. Between them
 * the board was put down again and the lamp shifted; some joints took solder, some did not and are
 * as they were. NAME-before and NAME-after; what is open after was left unchanged.
 */
public final class PlacedPairs {

  private static final double DEG = Math.PI / 180;

  private final SceneSampler sampler;
  private final SceneMix mix;
  private final long seed;

  /** Prepares the pairs. */
  public PlacedPairs(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
    this.mix = mix;
    this.seed = seed;
  }

  /** Before and after of one pair, numbered from 0. */
  public List<SceneSpec> pair(int number) {
    SceneSpec drawn = sampler.draw(number);
    Dice dice = new Dice(Grain.mix(seed, number, "placed".hashCode()));
    JointSampler placed = new JointSampler(mix, dice, drawn.part());
    placed.drawWhole(SceneMix.Fault.OPEN_RESTING, dice.chance(0.5));
    List<JointPlan> before = placed.joints();
    double untouched = dice.even(0.1, 0.6);
    List<JointPlan> after = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      JointPlan then = drawn.joints().get(i);
      boolean took = then.condition() != Condition.OPEN && then.condition() != Condition.MISSING;
      after.add(took && !dice.chance(untouched) ? at(then, before.get(i)) : before.get(i));
    }
    CameraSpec camera = moved(drawn.camera(), dice);
    return List.of(
        drawn
            .again("-before", drawn.lamps(), drawn.camera())
            .with(before, List.of(), List.of(), null),
        drawn
            .again("-after", shifted(drawn.lamps(), dice), camera)
            .with(after, List.of(), drawn.dirt(), null));
  }

  /** Solder draws a lead a little towards its land's middle, no more. */
  private static JointPlan at(JointPlan then, JointPlan before) {
    JointPlan here = then.withPlace(0.7 * before.pose().shiftMm(), 0.7 * before.pose().skewRad());
    return here.withLandRaised(null);
  }

  /** The camera over a board that was put down again, focused and exposed anew. */
  static CameraSpec moved(CameraSpec was, Dice dice) {
    CameraSpec.Sensing s = was.sensor();
    return new CameraSpec(
        was.widthPx(),
        was.heightPx(),
        was.pxPerMm() * dice.even(0.97, 1.03),
        was.aimAlongRowMm() + dice.even(-0.3, 0.3),
        was.aimAlongLeadMm() + dice.even(-0.3, 0.3),
        was.rotationRad() + dice.even(-3, 3) * DEG,
        new double[] {
          was.tiltRad()[0] + dice.even(-1, 1) * DEG, was.tiltRad()[1] + dice.even(-1, 1) * DEG
        },
        was.distanceMm(),
        was.lens().blurred(dice.even(0.8, 1.3)),
        new CameraSpec.Sensing(
            s.mosaic(),
            s.noise(),
            s.redGain(),
            s.blueGain(),
            s.exposure() * dice.even(0.9, 1.1),
            s.contrast(),
            s.saturation(),
            s.sharpen(),
            s.jpegQuality()));
  }

  private static List<LampSpec> shifted(List<LampSpec> lamps, Dice dice) {
    return lamps.stream()
        .map(lamp -> lamp.shifted(dice.even(-4, 4), dice.even(-12, 12), dice.even(0.9, 1.1)))
        .toList();
  }
}
