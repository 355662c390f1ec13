package leadlight.scene.draw;

import leadlight.model.UserError;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.PartSpec;

/** Draws the camera: where it stands, its lens, and what it makes of the light. */
public final class CameraSampler {

  private static final double DEG = Math.PI / 180;
  private static final double LEAST_BLUR_PX = 0.3;
  private static final double PALE_GAIN = 1.8;
  private static final double DARK_GAIN = 0.65;

  private final SceneMix mix;
  private final Dice dice;
  private final PartSpec part;

  CameraSampler(SceneMix mix, Dice dice, PartSpec part) {
    this.mix = mix;
    this.dice = dice;
    this.part = part;
  }

  CameraSpec draw(BodySpec body, Mask mask, double tilt) {
    double perMm = dice.scale(mix.pxPerPitch()) / part.pitchMm();
    double end = part.landsAtMm()[part.landsAtMm().length - 1];
    double high = part.landAheadMm() + dice.even(0.5, 2.2);
    double low = -part.footLengthMm() - body.gapMm() - dice.even(0.3, 2.2);
    double turn = dice.sign() * dice.even(mix.turnDeg()) * DEG;
    double lean = Math.abs(Math.sin(turn));
    double upright = Math.cos(turn);
    double margin = 2 * dice.even(0.6, 1.8);
    double across = end * upright + margin + lean * (high - low);
    double along = (high - low) * upright + lean * end;
    int quarter = quarter(dice.pick(mix.bodySide()));
    boolean standing = quarter % 2 == 1;
    double heading = dice.even(0, 2 * Math.PI);
    return new CameraSpec(
        (int) Math.round(perMm * (standing ? along : across)),
        (int) Math.round(perMm * (standing ? across : along)),
        perMm,
        end / 2 + dice.even(-0.3, 0.3),
        (high + low) / 2,
        quarter * Math.PI / 2 + turn,
        new double[] {tilt * Math.cos(heading), tilt * Math.sin(heading)},
        dice.even(60, 160),
        lens(perMm * part.pitchMm()),
        sensing(mask));
  }

  private CameraSpec.Lens lens(double pitchPx) {
    boolean uneven = dice.chance(0.4);
    return new CameraSpec.Lens(
        dice.even(-0.006, 0.012),
        Math.max(LEAST_BLUR_PX, dice.scale(mix.blurOfPitch()) * pitchPx),
        dice.even(-1, 1) * mix.blurSlope(),
        dice.even(0, 0.25),
        uneven ? dice.even(-0.3, 0.3) : 0,
        uneven ? dice.even(-0.3, 0.3) : 0,
        dice.even(0.005, 0.06),
        dice.chance(0.5) ? dice.even(-0.0012, 0.0012) : 0);
  }

  private CameraSpec.Sensing sensing(Mask mask) {
    double metering = mask.pale() ? PALE_GAIN : mask.dark() ? DARK_GAIN : 1;
    return sensing(dice, mix.mosaic(), mix.noise(), mix.sharpen(), metering, 0.78);
  }

  /**
   * Draws what a sensor makes of the light.
   *
   * @param metering how much more the camera exposes because of what it sees
   * @param leastQuality of the file, at least
   */
  public static CameraSpec.Sensing sensing(
      Dice dice,
      double mosaic,
      double[] noise,
      double sharpen,
      double metering,
      double leastQuality) {
    return new CameraSpec.Sensing(
        dice.chance(mosaic),
        dice.scale(noise),
        dice.even(0.92, 1.10),
        dice.even(0.88, 1.10),
        dice.even(0.10, 0.22) * metering,
        dice.even(0, 0.7),
        dice.even(0.85, 1.35),
        dice.chance(sharpen) ? dice.even(0.3, 1.4) : 0,
        dice.even(leastQuality, 0.96));
  }

  /** Quarter turns of the picture that bring the body to a side. */
  private static int quarter(String side) {
    return switch (side) {
      case "above" -> 0;
      case "right" -> 1;
      case "below" -> 2;
      case "left" -> 3;
      default -> throw new UserError("mix: body_side knows no \"" + side + "\"");
    };
  }
}
