package leadlight.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws the joints and bridges of a row. */
final class JointSampler {

  private static final double BAD_ROW_FAULTS = 0.7;

  /** Share of a bad row's faults that are plainly open, whatever the mix says of faults. */
  private static final double BAD_ROW_OPEN = 0.5;

  private final SceneMix mix;
  private final Dice dice;
  private final SceneSpec.Part part;
  private final double landWidth;
  private final SceneSpec.JointPlan[] joints;
  private final List<SceneSpec.Bridge> bridges = new ArrayList<>();
  private final double amount;
  private final double rowShift;

  JointSampler(SceneMix mix, Dice dice, SceneSpec.Part part) {
    this.mix = mix;
    this.dice = dice;
    this.part = part;
    this.landWidth = part.landWidthMm()[0];
    this.joints = new SceneSpec.JointPlan[part.landsAtMm().length];
    this.amount = dice.even(-4.5, -1.2);
    this.rowShift = dice.even(-0.015, 0.015);
  }

  List<SceneSpec.JointPlan> joints() {
    return Arrays.asList(joints);
  }

  List<SceneSpec.Bridge> bridges() {
    return bridges;
  }

  void draw() {
    for (int i = 0; i < joints.length; i++) {
      joints[i] = wetted();
    }
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

  private SceneSpec.JointPlan wetted() {
    return new SceneSpec.JointPlan(
        SceneSpec.Condition.WETTED,
        true,
        amount + dice.even(-1.1, 1.1),
        dice.even(0.72, 1.0),
        dice.even(0.004, 0.012),
        0,
        dice.even(0.006, 0.022),
        rowShift + dice.even(-0.012, 0.012),
        dice.even(-0.012, 0.012),
        0,
        0,
        0,
        1,
        0,
        0);
  }

  /** Returns true if the next joint is taken up too. */
  private boolean apply(int i, SceneMix.Fault fault) {
    SceneSpec.JointPlan was = joints[i];
    double foot = part.footLengthMm();
    switch (fault) {
      case OPEN_RESTING -> joints[i] = open(was, 0, 0);
      case OPEN_FLOATING -> joints[i] = open(was, dice.even(0.03, 0.11), dice.even(0, 0.05));
      case STARVED_TOE -> joints[i] = starved(was).withWetted(dice.even(0.50, 0.85), 1, 0);
      case STARVED_HEEL -> joints[i] = starved(was).withWetted(0, dice.even(0.12, 0.48), 0);
      case STARVED_SIDE -> joints[i] = starved(was).withWetted(0, 1, (int) dice.sign());
      case EXCESS -> joints[i] = excess(was);
      case MISSING -> joints[i] = missing(was);
      case SHIFTED -> joints[i] = was.withPlace(shift(), was.skewRad());
      case BENT -> joints[i] = was.withPlace(was.shiftMm(), dice.sign() * dice.even(0.06, 0.24));
      case PIT -> joints[i] = was.withVoids(part.leadWidthMm() * dice.even(0.06, 0.24));
      case BRIDGE_TOE -> bridge(i, dice.even(-0.05, 0.8) * part.landAheadMm(), 0.08, 0.25);
      case BRIDGE_MID -> bridge(i, -foot * dice.even(0.2, 0.7), 0.08, 0.3);
      case BRIDGE_HEEL -> bridge(i, -foot * dice.even(0.75, 1.0), 0.08, 0.3);
      case BRIDGE_HAIR -> bridge(i, dice.even(-0.9, 0.2) * foot, 0.035, 0.07);
      case BRIDGE_FULL -> bridge(i, -foot * dice.even(0.3, 0.5), 0.6 * foot, foot);
    }
    return fault.name().startsWith("BRIDGE");
  }

  private double shift() {
    double room = (landWidth - part.leadWidthMm()) / 2;
    return dice.sign() * (room + part.leadWidthMm() * dice.even(0.2, 0.95));
  }

  private void bridge(int i, double v, double narrowest, double widest) {
    int pin = Math.min(i, joints.length - 2) + 1;
    double width = Math.min(dice.even(narrowest, widest), 0.8);
    double most = part.landAheadMm() - 0.6 * width;
    double least = part.landAheadMm() - part.landLengthMm() + 0.6 * width;
    double pressure = Math.min(4.5, dice.even(0.8, 1.5) / width);
    bridges.add(
        new SceneSpec.Bridge(
            pin, Math.max(least, Math.min(most, v)), width, dice.even(0.1, 0.55), pressure));
  }

  private SceneSpec.JointPlan open(SceneSpec.JointPlan was, double lift, double toeUp) {
    double shift = was.shiftMm() + dice.even(-0.02, 0.02);
    double skew = was.skewRad() + dice.even(-0.02, 0.02);
    return was.with(SceneSpec.Condition.OPEN, strip() * dice.even(0.15, 0.8), 0)
        .withSolder(dice.chance(0.75), 0)
        .withPlace(shift, skew)
        .withLift(lift, toeUp);
  }

  /** The pressure at which solder on a bare land of this width stands as a half cylinder. */
  private double strip() {
    return 2 / landWidth;
  }

  private SceneSpec.JointPlan starved(SceneSpec.JointPlan was) {
    return was.with(SceneSpec.Condition.STARVED, was.pressurePerMm(), dice.even(0.6, 1));
  }

  private SceneSpec.JointPlan excess(SceneSpec.JointPlan was) {
    double spread = dice.even(0, 0.04);
    double pressure = dice.even(0.5, 0.85) / (landWidth / 2 + spread);
    return was.with(SceneSpec.Condition.EXCESS, pressure, 1.08).withSolder(true, spread);
  }

  private SceneSpec.JointPlan missing(SceneSpec.JointPlan was) {
    return was.with(SceneSpec.Condition.MISSING, strip() * dice.even(0.1, 0.85), 0)
        .withSolder(dice.chance(0.7), 0)
        .withPlace(0, 0);
  }
}
