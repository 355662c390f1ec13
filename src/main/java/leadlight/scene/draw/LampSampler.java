package leadlight.scene.draw;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.LampSpec;

/** Draws the lamps of a scene: the named ones, and the faint light of the room. */
public final class LampSampler {

  /** A lamp stands where the body does not shade the row: this far to either side of its front. */
  private static final double AROUND_FRONT_DEG = 125;

  private final Dice dice;
  private final double openSideDeg;

  public LampSampler(Dice dice, double rotationRad) {
    this.dice = dice;
    this.openSideDeg = 90 + Math.toDegrees(rotationRad);
  }

  /** Lamps by name, several joined by +; each further one is weaker. */
  public List<LampSpec> draw(String names) {
    List<LampSpec> out = new ArrayList<>();
    double power = 1;
    for (String name : names.split("\\+")) {
      out.add(lamp(name, power));
      power = dice.even(0.4, 0.9);
    }
    out.add(tinted(LampSpec.Kind.DOME, 0, 0, 0, dice.even(0.03, 0.14)));
    return out;
  }

  private LampSpec lamp(String name, double power) {
    return switch (name) {
      case "ring" -> ring(dice.even(40, 72), power);
      case "lowring" -> ring(dice.even(16, 34), power);
      case "axial" -> tinted(LampSpec.Kind.COAXIAL, 90, dice.even(9, 22), 0, power);
      case "dome" -> tinted(LampSpec.Kind.DOME, 0, 0, 0, power);
      case "side" -> patch(dice.even(18, 50), dice.even(14, 34), power);
      case "torch" -> patch(dice.even(58, 84), dice.even(2.5, 6), power);
      default -> throw new UserError("mix: lamp knows no \"" + name + "\"");
    };
  }

  private LampSpec ring(double elevation, double power) {
    int count = dice.chance(0.4) ? 8 * (1 + dice.below(7)) : 0;
    LampSpec even = tinted(LampSpec.Kind.RING, elevation, dice.even(6, 14), 0, power);
    return new LampSpec(
        even.kind(),
        even.elevationDeg(),
        even.spreadDeg(),
        0,
        count,
        power,
        even.red(),
        even.green(),
        even.blue());
  }

  private LampSpec patch(double elevation, double spread, double power) {
    double azimuth = openSideDeg + dice.even(-AROUND_FRONT_DEG, AROUND_FRONT_DEG);
    return tinted(LampSpec.Kind.PATCH, elevation, spread, azimuth, power);
  }

  /** Warm to cold white, about 3000 to 7000 K after the camera's own balance. */
  private LampSpec tinted(
      LampSpec.Kind kind, double elevation, double spread, double azimuth, double power) {
    double warm = dice.even(-0.10, 0.16);
    return new LampSpec(kind, elevation, spread, azimuth, 0, power, 1 + warm, 1, 1 - 1.1 * warm);
  }
}
