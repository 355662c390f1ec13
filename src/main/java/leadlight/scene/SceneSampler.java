package leadlight.scene;

import java.util.ArrayList;
import java.util.List;

/** Draws scenes from a mix: the same mix, seed and number give the same scene. */
final class SceneSampler {

  private static final double DEG = Math.PI / 180;

  private final SceneMix mix;
  private final long seed;

  SceneSampler(SceneMix mix, long seed) {
    this.mix = mix;
    this.seed = seed;
  }

  SceneSpec draw(int number) {
    Dice dice = new Dice(Grain.mix(seed, number, mix.name().hashCode()));
    SceneSpec.Part part = part(dice);
    double tilt = mix.tiltDeg() * DEG * Math.sqrt(dice.even(0, 1));
    SceneSpec.Body body = body(dice, tilt);
    SceneSpec.Board board = board(dice, part);
    SceneSpec.Metal metal = metal(dice);
    SceneSpec.Camera camera = camera(dice, part, body, board.mask(), tilt);
    List<SceneSpec.Lamp> lamps =
        new LampSampler(dice, camera.rotationRad()).draw(dice.pick(mix.lamp()));
    JointSampler joints = new JointSampler(mix, dice, part);
    joints.draw();
    return new SceneSpec(
        String.format("%s-%05d", mix.name(), number),
        dice.seed(),
        part,
        body,
        board,
        metal,
        lamps,
        camera,
        joints.joints(),
        joints.bridges(),
        dirt(dice, part, body));
  }

  private SceneSpec.Part part(Dice dice) {
    int leads = Integer.parseInt(dice.pick(mix.leads()));
    double pitch = Double.parseDouble(dice.pick(mix.pitchMm()));
    double[] places = new double[leads];
    double[] widths = new double[leads];
    double landWidth = pitch * dice.even(0.50, 0.64);
    for (int i = 0; i < leads; i++) {
      places[i] = i * pitch;
      widths[i] = landWidth;
    }
    double foot = Math.min(1.5, pitch * dice.even(1.05, 2.6));
    double ahead = dice.even(0.16, 0.46);
    double leadWidth = Math.min(pitch * dice.even(0.36, 0.52), landWidth * 0.95);
    return new SceneSpec.Part(
        pitch,
        places,
        widths,
        foot + ahead + dice.even(0.02, 0.25),
        ahead,
        dice.chance(0.4) ? landWidth * dice.even(0.1, 0.45) : 0.012,
        leadWidth,
        dice.even(0.10, 0.17),
        foot,
        dice.even(0.006, 0.024));
  }

  private SceneSpec.Body body(Dice dice, double tilt) {
    double gap = dice.even(0.22, 0.55);
    double highest = gap / Math.max(0.05, Math.tan(tilt));
    double height = Math.min(highest, dice.even(0.9, 3.2));
    boolean shell = dice.chance(0.3) && height > 1;
    return new SceneSpec.Body(
        gap,
        height,
        Math.min(0.8 * height, dice.even(0.30, 0.75)),
        dice.even(0.5, 1.5),
        dice.pick(mix.body()),
        shell ? dice.even(0.5, 1.0) : -1,
        height * dice.even(1.15, 1.4));
  }

  private SceneSpec.Board board(Dice dice, SceneSpec.Part part) {
    return new SceneSpec.Board(
        dice.pick(mix.mask()),
        dice.pick(mix.finish()),
        dice.even(0.03, 0.07),
        dice.chance(mix.gang()),
        dice.chance(0.8) ? dice.even(0.3, 1) : 0,
        Math.min(0.25, part.pitchMm() * dice.even(0.25, 0.5)),
        dice.chance(mix.pour()),
        dice.chance(mix.print()));
  }

  private SceneSpec.Metal metal(Dice dice) {
    boolean dull = dice.chance(mix.dull());
    return new SceneSpec.Metal(
        dice.pick(mix.lead()),
        dice.even(0.16, 0.36),
        dull ? dice.even(0.22, 0.38) : dice.even(0.07, 0.18),
        dull ? dice.even(0.05, 0.16) : dice.even(0, 0.03),
        dice.even(0.16, 0.34));
  }

  private SceneSpec.Camera camera(
      Dice dice, SceneSpec.Part part, SceneSpec.Body body, Mask mask, double tilt) {
    double perMm = dice.scale(mix.pxPerPitch()) / part.pitchMm();
    double end = part.landsAtMm()[part.landsAtMm().length - 1];
    double high = part.landAheadMm() + dice.even(0.5, 1.8);
    double low = -part.footLengthMm() - body.gapMm() - dice.even(0.3, 2.2);
    double turn = dice.even(-1, 1) * mix.turnDeg() * DEG;
    double across = end + 2 * dice.even(0.6, 1.8);
    double along = high - low + Math.abs(Math.sin(turn)) * across;
    int quarter = quarter(dice.pick(mix.bodySide()));
    boolean upright = quarter % 2 == 1;
    double heading = dice.even(0, 2 * Math.PI);
    double blur = dice.scale(mix.blurOfPitch()) * perMm * part.pitchMm();
    return new SceneSpec.Camera(
        (int) Math.round(perMm * (upright ? along : across)),
        (int) Math.round(perMm * (upright ? across : along)),
        perMm,
        end / 2 + dice.even(-0.3, 0.3),
        (high + low) / 2,
        quarter * Math.PI / 2 + turn,
        new double[] {tilt * Math.cos(heading), tilt * Math.sin(heading)},
        dice.even(60, 160),
        dice.even(-0.006, 0.012),
        Math.max(0.3, blur),
        dice.even(-1, 1) * mix.blurSlope(),
        dice.even(0, 0.25),
        dice.scale(mix.noise()),
        dice.even(0.92, 1.10),
        dice.even(0.88, 1.10),
        dice.even(0.11, 0.22) * (mask.pale() ? 1.8 : 1),
        dice.chance(mix.sharpen()) ? dice.even(0.3, 1.2) : 0,
        dice.even(0.82, 0.96));
  }

  /** Quarter turns of the picture that bring the body to a side. */
  private static int quarter(String side) {
    return switch (side) {
      case "above" -> 0;
      case "right" -> 1;
      case "below" -> 2;
      case "left" -> 3;
      default -> throw new leadlight.model.UserError("mix: body_side knows no \"" + side + "\"");
    };
  }

  private List<SceneSpec.Dirt> dirt(Dice dice, SceneSpec.Part part, SceneSpec.Body body) {
    List<SceneSpec.Dirt> out = new ArrayList<>();
    double end = part.landsAtMm()[part.landsAtMm().length - 1];
    double face = -part.footLengthMm() - body.gapMm();
    for (int k = dice.chance(mix.residue()) ? 1 + dice.below(6) : 0; k > 0; k--) {
      double size = dice.even(0.10, 0.35);
      out.add(dirt(SceneSpec.DirtKind.RESIDUE, dice, end, -1, 0.6, size, dice.even(0.2, 1)));
    }
    if (dice.chance(mix.fibre())) {
      out.add(dirt(SceneSpec.DirtKind.FIBRE, dice, end, -1, 0.9, dice.even(0.4, 1.2), 0.5));
    }
    if (dice.chance(mix.ball())) {
      double v = part.landAheadMm() + dice.even(0.05, 0.5);
      out.add(dirt(SceneSpec.DirtKind.BALL, dice, end, v, v, dice.even(0.03, 0.09), 1));
    }
    if (dice.chance(mix.scorch())) {
      double size = dice.even(0.3, 0.8);
      out.add(dirt(SceneSpec.DirtKind.SCORCH, dice, end, face, face, size, dice.even(0.4, 1)));
    }
    return out;
  }

  private static SceneSpec.Dirt dirt(
      SceneSpec.DirtKind kind,
      Dice dice,
      double end,
      double from,
      double to,
      double size,
      double strength) {
    return new SceneSpec.Dirt(kind, dice.even(0, end), dice.even(from, to), size, strength);
  }
}
