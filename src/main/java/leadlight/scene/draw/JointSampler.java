package leadlight.scene.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.PartSpec;

/** Draws the joints and bridges of a row. */
public final class JointSampler {

  private static final double BAD_ROW_FAULTS = 0.7;

  /** Share of a bad row's faults that are plainly open, whatever the mix says of faults. */
  private static final double BAD_ROW_OPEN = 0.5;

  /** Share of lifted lands under a lead that solder does not hold. */
  private static final double LIFTED_OPEN = 0.3;

  private final SceneMix mix;
  private final Dice dice;
  private final PartSpec part;
  private final JointPlan[] joints;
  private final List<Bridge> bridges = new ArrayList<>();
  private final double amount;
  private final double unlike;
  private final double rowShift;

  public JointSampler(SceneMix mix, Dice dice, PartSpec part) {
    this.mix = mix;
    this.dice = dice;
    this.part = part;
    this.joints = new JointPlan[part.landsAtMm().length];
    boolean byHand = dice.chance(mix.byHand());
    this.amount = byHand ? dice.even(-3.5, 0) : dice.even(-4.5, -1.2);
    this.unlike = byHand ? dice.even(1.2, 2.6) : dice.even(0.3, 1.1);
    this.rowShift = dice.even(-0.015, 0.015);
  }

  public List<JointPlan> joints() {
    return Arrays.asList(joints);
  }

  public List<Bridge> bridges() {
    return bridges;
  }

  /** No fault at all. */
  public void drawSound() {
    for (int i = 0; i < joints.length; i++) {
      joints[i] = wetted(i);
    }
  }

  public void draw() {
    drawSound();
    boolean bad = dice.chance(mix.badRow());
    boolean taken = false;
    for (int i = 0; i < joints.length; i++) {
      if (taken) {
        taken = false;
      } else if (dice.chance(bad ? BAD_ROW_FAULTS : mix.faultShare())) {
        SceneMix.Fault fault = dice.pick(mix.fault());
        boolean open = bad && dice.chance(BAD_ROW_OPEN);
        taken = apply(i, open ? SceneMix.Fault.OPEN_RESTING : fault);
      }
    }
  }

  /** One fault throughout; {@code alike} if bare solder stands as high on each land. */
  public void drawWhole(SceneMix.Fault fault, boolean alike) {
    drawSound();
    boolean bridge = fault.name().startsWith("BRIDGE");
    for (int i = 0; i < joints.length - (bridge ? 1 : 0); i++) {
      apply(i, fault);
    }
    JointPlan first = joints[0];
    boolean stands = first.condition() == Condition.OPEN || first.condition() == Condition.MISSING;
    for (int i = 1; alike && stands && i < joints.length; i++) {
      double pressure = first.fill().pressurePerMm() * strip(i) / strip(0);
      joints[i] = joints[i].with(joints[i].condition(), first.fill().withPressure(pressure));
    }
  }

  private JointPlan wetted(int i) {
    double fullest = 0.45 * strip(i);
    double pressure = Math.min(fullest, amount + dice.even(-unlike, unlike));
    return new JointPlan(
        Condition.WETTED,
        new JointPlan.Fill(true, pressure, dice.even(0.72, 1.0), dice.even(0.004, 0.012), 0),
        new JointPlan.Pose(
            dice.even(0.006, 0.022),
            rowShift + dice.even(-0.012, 0.012),
            dice.even(-0.012, 0.012),
            0,
            dice.even(-0.012, 0.012),
            dice.even(-0.03, 0.03)),
        JointPlan.Wetting.WHOLE,
        0,
        false,
        null);
  }

  /** Returns true if the next joint is taken up too. */
  private boolean apply(int i, SceneMix.Fault fault) {
    JointPlan was = joints[i];
    double foot = part.footLengthMm();
    switch (fault) {
      case OPEN_RESTING -> joints[i] = open(i, 0, 0);
      case OPEN_FLOATING -> joints[i] = open(i, dice.even(0.03, 0.11), dice.even(0, 0.05));
      case TORN_LAND -> joints[i] = torn(i);
      case LIFTED_LAND -> joints[i] = lifted(i);
      case STARVED_TOE -> joints[i] = starved(was).withWetted(dice.even(0.50, 0.85), 1, 0);
      case STARVED_HEEL -> joints[i] = starved(was).withWetted(0, dice.even(0.12, 0.48), 0);
      case STARVED_SIDE -> joints[i] = starved(was).withWetted(0, 1, (int) dice.sign());
      case EXCESS -> joints[i] = excess(i);
      case MISSING -> joints[i] = missing(i);
      case SHIFTED -> joints[i] = was.withPlace(shift(i), was.pose().skewRad());
      case BENT ->
          joints[i] = was.withPlace(was.pose().shiftMm(), dice.sign() * dice.even(0.06, 0.24));
      case PIT -> joints[i] = was.withPit(part.leadWidthMm() * dice.even(0.06, 0.24));
      case BRIDGE_TOE -> bridge(i, dice.even(-0.05, 0.8) * part.landAheadMm(), 0.08, 0.25);
      case BRIDGE_MID -> bridge(i, -foot * dice.even(0.2, 0.7), 0.08, 0.3);
      case BRIDGE_HEEL -> bridge(i, -foot * dice.even(0.75, 1.0), 0.08, 0.3);
      case BRIDGE_HAIR -> bridge(i, dice.even(-0.9, 0.2) * foot, 0.035, 0.07);
      case BRIDGE_FULL -> bridge(i, -foot * dice.even(0.3, 0.5), 0.6 * foot, foot);
    }
    return fault.name().startsWith("BRIDGE");
  }

  private double shift(int i) {
    double room = (part.landWidthMm()[i] - part.leadWidthMm()) / 2;
    return dice.sign() * (room + part.leadWidthMm() * dice.even(0.2, 0.95));
  }

  private void bridge(int i, double v, double narrowest, double widest) {
    int pin = Math.min(i, joints.length - 2) + 1;
    joints[pin - 1] = joints[pin - 1].withLandRaised(null);
    double width = Math.min(dice.even(narrowest, widest), 0.8);
    double most = part.landAheadMm() - 0.6 * width;
    double least = part.landAheadMm() - part.landLengthMm() + 0.6 * width;
    double pressure = Math.min(4.5, dice.even(0.8, 1.5) / width);
    bridges.add(
        new Bridge(pin, Math.max(least, Math.min(most, v)), width, dice.even(0.1, 0.55), pressure));
  }

  private JointPlan open(int i, double lift, double toeUp) {
    JointPlan.Pose was = joints[i].pose();
    JointPlan.Pose pose =
        new JointPlan.Pose(
            was.gapMm(),
            was.shiftMm() + dice.even(-0.02, 0.02),
            was.skewRad() + dice.even(-0.02, 0.02),
            lift,
            toeUp,
            was.rollRad());
    return joints[i].with(Condition.OPEN, fill(i, dice.even(0.15, 0.8), 0.75)).withPose(pose);
  }

  /** The land came off with the solder on it, or was torn at an earlier try. */
  private JointPlan torn(int i) {
    JointPlan open = open(i, dice.even(0, 0.04), dice.even(0, 0.03));
    return open.with(Condition.OPEN, fill(i, 0, 0)).withoutLand();
  }

  /** The land came off at its toe end and carries a sound joint, or solder that never took. */
  private JointPlan lifted(int i) {
    JointPlan carried = dice.chance(LIFTED_OPEN) ? open(i, 0, 0) : joints[i];
    return carried.withLandRaised(dice.even(0.03, 0.15));
  }

  /** Solder that stands on a land by itself, domed to a share of a half cylinder. */
  private JointPlan.Fill fill(int i, double dome, double share) {
    return new JointPlan.Fill(dice.chance(share), strip(i) * dome, 0, joints[i].fill().filmMm(), 0);
  }

  /** The pressure at which solder on a bare land of this width stands as a half cylinder. */
  private double strip(int i) {
    return 2 / part.landWidthMm()[i];
  }

  private JointPlan starved(JointPlan was) {
    JointPlan.Fill f = was.fill();
    return was.with(
        Condition.STARVED,
        new JointPlan.Fill(true, f.pressurePerMm(), dice.even(0.6, 1), f.filmMm(), 0));
  }

  private JointPlan excess(int i) {
    double spread = dice.even(0, 0.04);
    double pressure = dice.even(0.5, 0.85) / (part.landWidthMm()[i] / 2 + spread);
    return joints[i].with(
        Condition.EXCESS,
        new JointPlan.Fill(true, pressure, 1.08, joints[i].fill().filmMm(), spread));
  }

  private JointPlan missing(int i) {
    return joints[i].with(Condition.MISSING, fill(i, dice.even(0.1, 0.85), 0.7)).withPlace(0, 0);
  }
}
