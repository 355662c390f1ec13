package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.plan.Push;
import leadlight.scene.plan.SceneSpec;

/**
 * Draws which leads a pick pushes, from where, and how far they yield. A pick of 50 to 100
 * micrometres at its tip stands beside the lead and leans away from it, at 25 to 60 degrees: common
 * practice, no source.
 */
final class Picks {

  private static final double DEG = Math.PI / 180;

  /** What a soldered lead yields at most: its own bending, board and land; see nudge.json. */
  private static final double FIRM_MM = 0.004;

  /** The least that a loose one is pushed: below half of what 0.2 N does to it. */
  private static final double LOOSE_MM = 0.012;

  /** The most, as a share of the pitch: further it touches the next land. */
  private static final double LOOSE_PITCH = 0.24;

  private final SceneSpec row;
  private final PartSpec part;
  private final Dice dice;

  Picks(SceneSpec row, Dice dice) {
    this.row = row;
    this.part = row.part();
    this.dice = dice;
  }

  /** Lands, counted from 1, whose leads are pushed: loose ones first, up to half; mixed. */
  List<Integer> lands(int count) {
    List<Integer> loose = new ArrayList<>();
    List<Integer> firm = new ArrayList<>();
    for (int land = 1; land <= row.joints().size(); land++) {
      JointPlan joint = row.joints().get(land - 1);
      if (joint.condition() != Condition.MISSING
          && joint.landRaisedMm() == null
          && !bridged(land)) {
        (loose(joint) ? loose : firm).add(land);
      }
    }
    List<Integer> some = some(loose, count / 2);
    some.addAll(some(firm, count - some.size()));
    return some(some, count);
  }

  private List<Integer> some(List<Integer> of, int most) {
    List<Integer> left = new ArrayList<>(of);
    List<Integer> some = new ArrayList<>();
    while (!left.isEmpty() && some.size() < most) {
      some.add(left.remove(dice.below(left.size())));
    }
    return some;
  }

  private static boolean loose(JointPlan joint) {
    return joint.condition() == Condition.OPEN;
  }

  private boolean bridged(int land) {
    return row.bridges().stream().map(Bridge::pin).anyMatch(p -> p == land || p + 1 == land);
  }

  /** A push of a lead, from either side; nothing if the pick has no room on that side. */
  Optional<Push> push(int land) {
    int i = land - 1;
    JointPlan joint = row.joints().get(i);
    double side = dice.sign();
    double far =
        loose(joint)
            ? dice.scale(new double[] {LOOSE_MM, LOOSE_PITCH * part.pitchMm()})
            : dice.even(0, FIRM_MM);
    double radius = dice.even(0.025, 0.05);
    double v = -part.footLengthMm() * dice.even(0.05, 0.4);
    double lean = side * dice.even(5, 40) * DEG;
    double rise = dice.even(25, 60) * DEG;
    double taper = dice.even(0.03, 0.09);
    Material material = dice.chance(0.6) ? Material.STEEL : Material.BLACK_PLASTIC;
    double middle = place(i, bent(row, joint, -side * far), v);
    double tip = middle + side * (part.leadWidthMm() / 2 + radius);
    int next = i + (int) side;
    boolean room =
        next < 0
            || next >= row.joints().size()
            || row.joints().get(next).condition() == Condition.MISSING
            || side * (place(next, row.joints().get(next), v) - tip)
                > part.leadWidthMm() / 2 + radius;
    double[] at = {tip, v, part.leadThicknessMm() / 2 + joint.pose().liftMm() + radius};
    return room
        ? Optional.of(
            new Push(land, -side * far, loose(joint), at, lean, rise, radius, taper, material))
        : Optional.empty();
  }

  /** Middle of a lead along the row at a place along it. */
  private double place(int i, JointPlan joint, double v) {
    double fromHeel = part.footLengthMm() + v;
    return part.landsAtMm()[i]
        + joint.pose().shiftMm()
        + fromHeel * Math.sin(joint.pose().skewRad());
  }

  /**
   * A lead bent to the side by a force at its toe: a cantilever from the body, whose deflection at
   * x of its length L is (3 L x^2 - x^3) / 2 L^3 of that at its end (Roark's Formulas for Stress
   * and Strain, from memory).
   */
  static JointPlan bent(SceneSpec row, JointPlan joint, double toeMm) {
    double foot = row.part().footLengthMm();
    double heel = row.body().gapMm();
    double whole = foot + heel;
    double share = heel * heel * (3 * whole - heel) / (2 * whole * whole * whole);
    double turned = Math.sin(joint.pose().skewRad()) + toeMm * (1 - share) / foot;
    return joint.withPlace(joint.pose().shiftMm() + toeMm * share, Math.asin(turned));
  }
}
