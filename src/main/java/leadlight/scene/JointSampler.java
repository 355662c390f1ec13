package leadlight.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws the joints and bridges of a row. */
final class JointSampler {

  private static final double BAD_ROW_FAULTS = 0.7;

  private final SceneMix mix;
  private final Dice dice;
  private final SceneSpec.Part part;
  private final SceneSpec.JointPlan[] joints;
  private final List<SceneSpec.Bridge> bridges = new ArrayList<>();
  private final double amount;
  private final double rowShift;

  JointSampler(SceneMix mix, Dice dice, SceneSpec.Part part) {
    this.mix = mix;
    this.dice = dice;
    this.part = part;
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
    double share = dice.chance(mix.badRow()) ? BAD_ROW_FAULTS : mix.faultShare();
    boolean afterBridge = false;
    for (int i = 0; i < joints.length; i++) {
      if (afterBridge) {
        afterBridge = false;
      } else if (dice.chance(share)) {
        SceneMix.Fault fault = dice.pick(mix.fault());
        afterBridge =
            apply(
                i,
                share == BAD_ROW_FAULTS && dice.chance(0.5) ? SceneMix.Fault.OPEN_RESTING : fault);
      }
    }
  }

  private SceneSpec.JointPlan wetted() {
    return plan(
        SceneSpec.Condition.WETTED, amount + dice.even(-1.1, 1.1), dice.even(0.72, 1.0), 0, 1);
  }

  private SceneSpec.JointPlan plan(
      SceneSpec.Condition condition, double pressure, double climb, double from, double to) {
    return new SceneSpec.JointPlan(
        condition,
        true,
        pressure,
        climb,
        dice.even(0.004, 0.012),
        0,
        dice.even(0.006, 0.022),
        rowShift + dice.even(-0.012, 0.012),
        dice.even(-0.012, 0.012),
        0,
        0,
        from,
        to,
        0,
        0,
        0);
  }

  /** Returns true if the next joint is taken up too. */
  private boolean apply(int i, SceneMix.Fault fault) {
    SceneSpec.JointPlan was = joints[i];
    double foot = part.footLengthMm();
    switch (fault) {
      case OPEN_RESTING -> joints[i] = open(0, 0);
      case OPEN_FLOATING -> joints[i] = open(dice.even(0.03, 0.11), dice.even(0, 0.05));
      case STARVED_TOE -> joints[i] = starved(dice.even(0.50, 0.85), 1);
      case STARVED_HEEL -> joints[i] = starved(0, dice.even(0.12, 0.48));
      case STARVED_SIDE -> joints[i] = with(starved(0, 1), "side", dice.sign());
      case EXCESS -> joints[i] = excess();
      case MISSING -> joints[i] = missing();
      case SHIFTED -> joints[i] = with(was, "shift", shift());
      case BENT -> joints[i] = with(was, "skew", dice.sign() * dice.even(0.06, 0.24));
      case PIT -> joints[i] = with(was, "void", part.leadWidthMm() * dice.even(0.06, 0.24));
      case TORN_LAND -> joints[i] = with(was, "torn", dice.even(0.03, 0.12));
      case BRIDGE_TOE -> {
        return bridge(i, dice.even(-0.05, 0.8) * part.landAheadMm(), dice.even(0.08, 0.25));
      }
      case BRIDGE_MID -> {
        return bridge(i, -foot * dice.even(0.2, 0.7), dice.even(0.08, 0.3));
      }
      case BRIDGE_HEEL -> {
        return bridge(i, -foot * dice.even(0.75, 1.0), dice.even(0.08, 0.3));
      }
      case BRIDGE_HAIR -> {
        return bridge(i, dice.even(-0.9, 0.2) * foot, dice.even(0.035, 0.07));
      }
      case BRIDGE_FULL -> {
        return bridge(i, -foot * dice.even(0.3, 0.5), foot * dice.even(0.6, 1.0));
      }
    }
    return false;
  }

  private double shift() {
    double room = (part.landWidthMm()[0] - part.leadWidthMm()) / 2;
    return dice.sign() * (room + part.leadWidthMm() * dice.even(0.2, 0.95));
  }

  private boolean bridge(int i, double v, double width) {
    int first = Math.min(i, joints.length - 2);
    double full = Math.min(width, 0.8);
    bridges.add(
        new SceneSpec.Bridge(
            first + 1, v, full, dice.even(0.1, 0.55), Math.min(4.5, dice.even(0.8, 1.5) / full)));
    return true;
  }

  private SceneSpec.JointPlan open(double lift, double toeUp) {
    boolean bare = dice.chance(0.25);
    double most = 2 / part.landWidthMm()[0];
    SceneSpec.JointPlan p = plan(SceneSpec.Condition.OPEN, most * dice.even(0.15, 0.8), 0, 0, 1);
    return new SceneSpec.JointPlan(
        p.condition(),
        !bare,
        p.pressurePerMm(),
        0,
        p.filmMm(),
        0,
        p.gapMm(),
        p.shiftMm() + dice.even(-0.02, 0.02),
        p.skewRad() + dice.even(-0.02, 0.02),
        lift,
        toeUp,
        0,
        1,
        0,
        0,
        0);
  }

  private SceneSpec.JointPlan starved(double from, double to) {
    return plan(
        SceneSpec.Condition.STARVED, amount + dice.even(-1, 1), dice.even(0.6, 1), from, to);
  }

  private SceneSpec.JointPlan excess() {
    SceneSpec.JointPlan p = plan(SceneSpec.Condition.EXCESS, 0, 1.08, 0, 1);
    double spread = dice.even(0, 0.04);
    double half = part.landWidthMm()[0] / 2 + spread;
    return new SceneSpec.JointPlan(
        p.condition(),
        true,
        dice.even(0.5, 0.85) / half,
        p.climb(),
        p.filmMm(),
        spread,
        p.gapMm(),
        p.shiftMm(),
        p.skewRad(),
        0,
        0,
        0,
        1,
        0,
        0,
        0);
  }

  private SceneSpec.JointPlan missing() {
    double most = 2 / part.landWidthMm()[0];
    SceneSpec.JointPlan p = plan(SceneSpec.Condition.MISSING, most * dice.even(0.1, 0.85), 0, 0, 1);
    return new SceneSpec.JointPlan(
        p.condition(),
        dice.chance(0.7),
        p.pressurePerMm(),
        0,
        p.filmMm(),
        0,
        0,
        0,
        0,
        0,
        0,
        0,
        1,
        0,
        0,
        0);
  }

  private static SceneSpec.JointPlan with(SceneSpec.JointPlan p, String what, double value) {
    return new SceneSpec.JointPlan(
        p.condition(),
        p.solder(),
        p.pressurePerMm(),
        p.climb(),
        p.filmMm(),
        p.spreadMm(),
        p.gapMm(),
        what.equals("shift") ? value : p.shiftMm(),
        what.equals("skew") ? value : p.skewRad(),
        p.liftMm(),
        p.toeUpRad(),
        p.wettedFrom(),
        p.wettedTo(),
        what.equals("side") ? (int) value : p.sideBare(),
        what.equals("torn") ? value : p.landLiftMm(),
        what.equals("void") ? value : p.voids());
  }
}
