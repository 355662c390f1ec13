package leadlight.scene.legs;

import java.util.ArrayList;
import java.util.List;
import leadlight.connector.Leg;
import leadlight.model.BoardSide;
import leadlight.scene.chance.Dice;

/** Draws how each leg of a part stands and is soldered. */
final class LegSoldering {

  private static final double THINNEST_MM = 0.16;

  private final LegMix mix;
  private final Dice dice;
  private final BoardSide side;

  LegSoldering(LegMix mix, Dice dice, BoardSide side) {
    this.mix = mix;
    this.dice = dice;
    this.side = side;
  }

  /** One plan a leg; the solder side is mirrored from left to right. */
  List<LegPlan> draw(List<Leg> known) {
    double thick = dice.even(0.25, 0.5);
    double length = dice.even(0.55, 0.88);
    List<LegPlan> out = new ArrayList<>();
    for (int i = 0; i < known.size(); i++) {
      Leg leg = known.get(i);
      double u = side == BoardSide.SOLDER ? -leg.xMm() : leg.xMm();
      Slot land = new Slot(leg.land().widthMm(), leg.land().heightMm());
      Leg.Size opening = leg.opening().orElseThrow();
      Slot hole = new Slot(opening.widthMm(), opening.heightMm());
      LegPlan.Condition condition = dice.pick(mix.condition());
      LegPlan.Stand stand = stand(hole, thick, length, condition);
      out.add(
          new LegPlan(
              i + 1, u, leg.yMm(), land, hole, stand, condition, solder(condition, hole, land)));
    }
    return out;
  }

  private LegPlan.Stand stand(Slot hole, double thick, double length, LegPlan.Condition condition) {
    double shorter = Math.min(hole.widthMm(), hole.heightMm());
    double longer = Math.max(hole.widthMm(), hole.heightMm());
    double a = Math.max(THINNEST_MM, thick * shorter);
    double b = length * (longer > 1.3 * shorter ? longer - 0.2 * shorter : 0.85 * longer);
    boolean upright = hole.heightMm() >= hole.widthMm();
    double freeA = Math.max(0, 0.8 * (shorter - a) / 2);
    double freeB = Math.max(0, 0.6 * (longer - b) / 2);
    double offA = dice.even(-freeA, freeA);
    double offB = dice.even(-freeB, freeB);
    double tip = dice.chance(0.2) ? dice.even(0.02, 0.12) : dice.even(0.12, 0.8);
    if (condition == LegPlan.Condition.EXCESS) {
      tip = dice.even(-0.1, 0.25);
    }
    return new LegPlan.Stand(
        upright ? a : b,
        upright ? b : a,
        upright ? offA : offB,
        upright ? offB : offA,
        dice.even(-5, 5) * Math.PI / 180,
        tip);
  }

  private LegPlan.Fill solder(LegPlan.Condition condition, Slot hole, Slot land) {
    double half = Math.min(land.widthMm(), land.heightMm()) / 2;
    double climb = dice.even(0.05, 0.4);
    double pressure = dice.even(-0.6, 0.5) / half;
    double spread = dice.chance(0.7) ? dice.even(1, 1.4) : dice.even(0.3, 1.1);
    double ragged = dice.chance(0.5) ? dice.even(0, 0.3) : 0;
    double turn = dice.even(0, 360);
    return switch (condition) {
      case PART_WETTED ->
          new LegPlan.Fill(turn, dice.even(25, 330), spread, ragged, climb, pressure, 0, 0, 0);
      case RECESSED ->
          new LegPlan.Fill(
              turn,
              dice.chance(0.4) ? dice.even(20, 200) : 0,
              0,
              0,
              -dice.even(0.08, 0.5),
              dice.even(-0.5, 0.5),
              0,
              0,
              0);
      case VOID ->
          new LegPlan.Fill(
              0,
              0,
              Math.max(1, spread),
              ragged,
              climb,
              pressure,
              0,
              dice.even(0.06, 0.16) * Math.max(0.6, 2 * half),
              turn);
      case EXCESS -> new LegPlan.Fill(0, 0, 1.5, 0, climb, dice.even(0.5, 0.85) / half, 0, 0, 0);
      case CAPPED ->
          new LegPlan.Fill(
              0, 0, spread, ragged, 0.05, dice.even(0.2, 0.7) / half, dice.even(0.03, 0.1), 0, 0);
      case FILLED, UNSOLDERED -> new LegPlan.Fill(0, 0, spread, ragged, climb, pressure, 0, 0, 0);
    };
  }
}
