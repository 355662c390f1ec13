package leadlight.scene.legs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.Leg;
import leadlight.model.BoardSide;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.CameraSampler;
import leadlight.scene.draw.LampSampler;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.MetalSpec;

/** Draws scenes of anchor legs from a mix: the same mix, seed and number give the same scene. */
public final class LegSampler {

  private static final double DEG = Math.PI / 180;
  private static final double DARK_EXPOSURE = 0.65;
  private static final double PALE_EXPOSURE = 1.7;

  private final LegMix mix;
  private final long seed;

  /** Prepares a set. */
  public LegSampler(LegMix mix, long seed) {
    this.mix = mix;
    this.seed = seed;
  }

  /** What one picture of the set is made of, numbered from 0. */
  public LegSceneSpec draw(int number) {
    Dice dice = new Dice(Grain.mix(seed, number, mix.name().hashCode()));
    BoardSide side = dice.pick(mix.side());
    String connector = dice.pick(mix.connector());
    List<Leg> known = ConnectorLibrary.builtIn().find(connector).legs().orElseThrow().numbered();
    Mask mask = dice.pick(mix.mask());
    List<LegPlan> legs = new LegSoldering(mix, dice, side).draw(known);
    if (dice.chance(mix.alone())) {
      legs = List.of(legs.get(dice.below(legs.size())));
    }
    CameraSpec camera = camera(dice, legs, mask);
    List<LampSpec> lamps = new LampSampler(dice, camera.rotationRad()).draw(dice.pick(mix.lamp()));
    return new LegSceneSpec(
        String.format("%s-%05d", mix.name(), number),
        dice.seed(),
        side,
        connector,
        mask,
        dice.pick(mix.finish()),
        dice.even(0.03, 0.09),
        metal(dice),
        lamps,
        camera,
        side == BoardSide.COMPONENT ? Optional.of(shell(dice, known)) : Optional.empty(),
        legs,
        dirt(dice, legs));
  }

  private MetalSpec metal(Dice dice) {
    boolean dull = dice.chance(mix.dull());
    MetalSpec.Uneven uneven =
        dice.chance(mix.uneven())
            ? new MetalSpec.Uneven(
                dice.even(0.15, 0.8),
                dice.even(0.1, 0.6),
                dice.even(0, 0.35),
                dice.even(0, 0.2),
                dice.even(0, 0.4))
            : null;
    return new MetalSpec(
        dice.pick(mix.leg()),
        dice.even(0.12, 0.4),
        0,
        dull ? dice.even(0.22, 0.42) : dice.even(0.06, 0.2),
        dull ? dice.even(0.02, 0.12) : dice.even(0, 0.05),
        dice.even(0.1, 0.35),
        uneven);
  }

  /** The shell ends just inside the legs, so that about half of each land lies below it. */
  private static LegSceneSpec.Shell shell(Dice dice, List<Leg> known) {
    double half = known.stream().mapToDouble(Leg::xMm).max().orElseThrow();
    double top = known.stream().mapToDouble(Leg::yMm).min().orElseThrow();
    double low = known.stream().mapToDouble(Leg::yMm).max().orElseThrow();
    double inset = dice.even(0.15, 0.75);
    return new LegSceneSpec.Shell(
        -half + inset,
        top - dice.even(0.6, 1.2),
        half - inset,
        low + dice.even(0.8, 2),
        dice.even(1.5, 3.2),
        dice.even(0.45, 1.1));
  }

  private CameraSpec camera(Dice dice, List<LegPlan> legs, Mask mask) {
    double left = legs.stream().mapToDouble(it -> it.uMm() - wide(it)).min().orElseThrow();
    double right = legs.stream().mapToDouble(it -> it.uMm() + wide(it)).max().orElseThrow();
    double top = legs.stream().mapToDouble(it -> it.vMm() - tall(it)).min().orElseThrow();
    double low = legs.stream().mapToDouble(it -> it.vMm() + tall(it)).max().orElseThrow();
    double margin = legs.size() == 1 ? dice.even(0.5, 1.5) : dice.even(0.5, 1.4);
    double landMm = 2 * Math.max(wide(legs.get(0)), tall(legs.get(0)));
    double across = right - left + 2 * margin;
    double down = low - top + 2 * margin;
    double perMm =
        legs.size() == 1
            ? dice.scale(mix.aloneLandPx()) / landMm
            : dice.scale(mix.widthPx()) / across;
    double tilt = dice.even(mix.tiltDeg()) * DEG;
    double heading = dice.even(0, 2 * Math.PI);
    return new CameraSpec(
        (int) Math.round(perMm * across),
        (int) Math.round(perMm * down),
        perMm,
        (left + right) / 2,
        (top + low) / 2,
        dice.sign() * dice.even(mix.turnDeg()) * DEG,
        new double[] {tilt * Math.cos(heading), tilt * Math.sin(heading)},
        dice.even(60, 160),
        new CameraSpec.Lens(
            dice.even(-0.006, 0.012),
            dice.scale(mix.blurPx()),
            dice.even(-0.3, 0.3),
            dice.even(0, 0.25),
            dice.even(-0.2, 0.2),
            dice.even(-0.2, 0.2),
            dice.even(0.005, 0.05),
            dice.chance(0.5) ? dice.even(-0.001, 0.001) : 0),
        sensing(dice, mask));
  }

  private static double wide(LegPlan leg) {
    return leg.land().widthMm() / 2;
  }

  private static double tall(LegPlan leg) {
    return leg.land().heightMm() / 2;
  }

  private CameraSpec.Sensing sensing(Dice dice, Mask mask) {
    double metering = mask.pale() ? PALE_EXPOSURE : mask.dark() ? DARK_EXPOSURE : 1;
    return CameraSampler.sensing(dice, mix.mosaic(), mix.noise(), mix.sharpen(), metering, 0.8);
  }

  /** Residue and pools lie where soldering was done: on or beside a leg. */
  private List<Dirt> dirt(Dice dice, List<LegPlan> legs) {
    List<Dirt> out = new ArrayList<>();
    for (DirtKind kind : new DirtKind[] {DirtKind.RESIDUE, DirtKind.POOL}) {
      if (!dice.chance(kind == DirtKind.POOL ? mix.pool() : mix.residue())) {
        continue;
      }
      for (LegPlan leg : legs) {
        if (dice.chance(0.5)) {
          double u = leg.uMm() + dice.even(-0.8, 0.8);
          double v = leg.vMm() + dice.even(-0.8, 0.8);
          out.add(new Dirt(kind, u, v, dice.even(0.25, 0.9), dice.even(0.2, 0.9)));
        }
      }
    }
    return out;
  }
}
