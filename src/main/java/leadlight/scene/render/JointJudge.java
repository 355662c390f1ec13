package leadlight.scene.render;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.scene.camera.Projection;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.solids.LeadSolid;
import leadlight.scene.solids.LiftFrame;
import leadlight.scene.solids.RowLayout;

/**
 * The verdict a scene's joint deserves by class 2, from how it was built. Limits: side overhang 50
 * % of the lead's width or 0.5 mm, bridging, open and missing leads defects, end joint width 50 %
 * (IPC-A-610 table 8-5 by way of the project's figures); 0.13 mm clearance (IPC-2221, from memory);
 * a land lifted by more than its own thickness (IPC-A-610 section 10, lifted lands, from memory).
 * Between the bands lies "limit", which is not counted: 40 to 58 % overhang, 55 to 95 % of the foot
 * wetted, leads nearer than 0.13 mm, a ball beside the joint, excess, pits wider than a quarter of
 * the lead, a land lifted by less.
 */
public final class JointJudge {

  private static final double OVERHANG_LIMIT = 0.40;
  private static final double OVERHANG_DEFECT = 0.58;
  private static final double OVERHANG_MOST_MM = 0.5;
  private static final double WETTED_DEFECT = 0.55;
  private static final double WETTED_WHOLE = 0.95;
  private static final double CLEARANCE_MM = 0.13;
  private static final double PIT_LIMIT = 0.25;

  private JointJudge() {}

  public static Truth.JointTruth truth(RowLayout row, Projection camera, LeadSolid lead, int i) {
    JointPlan joint = row.spec.joints().get(i);
    boolean there = lead.present;
    double overhang = there ? overhang(row, i) : 0;
    List<String> findings = new ArrayList<>();
    Integer bridge = bridgeTo(row, i);
    String class2 = verdict(row, i, overhang, bridge, findings);
    boolean starved = joint.condition() == Condition.STARVED;
    double u = row.part.landsAtMm()[i];
    return new Truth.JointTruth(
        pin(row, i),
        there ? round(foot(row, camera, lead, i, 0, 1)) : null,
        there ? round(foot(row, camera, lead, i, 0, 0)) : null,
        there ? corners(row, camera, lead, i) : null,
        round(seen(row, camera, i, u, row.part.landAheadMm(), 0)),
        round(camera.map(u, row.landHeel(), 0)),
        joint.condition().id(),
        there ? round(overhang) : null,
        starved ? new double[] {round(joint.wetting().from()), round(joint.wetting().to())} : null,
        joint.condition() == Condition.OPEN && joint.pose().liftMm() > 0
            ? round(joint.pose().liftMm())
            : null,
        joint.landRaisedMm() == null ? null : round(joint.landRaisedMm()),
        bridge,
        findings.isEmpty() ? null : findings,
        class2);
  }

  private static String verdict(
      RowLayout row, int i, double overhang, Integer bridge, List<String> findings) {
    JointPlan joint = row.spec.joints().get(i);
    boolean defect = false;
    boolean limit = beside(row, i) || near(row, i);
    limit |= joint.pitMm() > PIT_LIMIT / 2 * row.part.leadWidthMm();
    switch (joint.condition()) {
      case OPEN, MISSING -> {
        findings.add(joint.condition().id());
        defect = true;
      }
      case STARVED -> {
        double wetted = joint.wetting().to() - joint.wetting().from();
        findings.add(joint.condition().id());
        defect = wetted < WETTED_DEFECT;
        limit |= wetted < WETTED_WHOLE || joint.wetting().sideBare() != 0;
      }
      case EXCESS -> {
        findings.add(joint.condition().id());
        limit = true;
      }
      case WETTED -> {}
    }
    if (joint.landRaisedMm() != null) {
      findings.add("lifted-land");
      defect |= joint.landRaisedMm() > LiftFrame.FOIL_MM;
      limit = true;
    }
    if (bridge != null) {
      findings.add("bridge");
      defect = true;
    }
    if (beside(row, i)) {
      findings.add("solder-ball");
    }
    double mm = overhang * row.part.leadWidthMm();
    if (overhang > 0.5 || mm > OVERHANG_MOST_MM) {
      findings.add("side-overhang");
    }
    defect |= overhang > OVERHANG_DEFECT || mm > OVERHANG_MOST_MM;
    limit |= overhang > OVERHANG_LIMIT;
    return defect ? "defect" : limit ? "limit" : "acceptable";
  }

  /** Furthest that the foot stands over its land's side, in lead widths. */
  static double overhang(RowLayout row, int i) {
    JointPlan joint = row.spec.joints().get(i);
    double toe =
        joint.pose().shiftMm() + row.part.footLengthMm() * Math.sin(joint.pose().skewRad());
    double off = Math.max(Math.abs(joint.pose().shiftMm()), Math.abs(toe));
    double over = off + (row.part.leadWidthMm() - row.part.landWidthMm()[i]) / 2;
    return Math.max(0, over / row.part.leadWidthMm());
  }

  private static Integer bridgeTo(RowLayout row, int i) {
    for (Bridge bridge : row.spec.bridges()) {
      if (bridge.pin() == i + 1) {
        return pin(row, i + 1);
      }
      if (bridge.pin() == i) {
        return pin(row, i - 1);
      }
    }
    return null;
  }

  /** Number of a land's pin, counted from the row's right end where the connector does. */
  static int pin(RowLayout row, int i) {
    return row.part.pin1Right() ? row.leads() - i : i + 1;
  }

  /**
   * True if a ball lies in one of the gaps beside the joint, or ahead of it within half a pitch.
   */
  private static boolean beside(RowLayout row, int i) {
    double reach = row.part.pitchMm();
    return row.spec.dirt().stream()
        .filter(d -> d.kind() == DirtKind.BALL)
        .anyMatch(
            d ->
                Math.abs(d.uMm() - row.part.landsAtMm()[i]) < reach + d.sizeMm()
                    && d.vMm() < row.part.landAheadMm() + reach / 2);
  }

  /** True if the lead stands nearer to a neighbour's than the clearance. */
  private static boolean near(RowLayout row, int i) {
    for (int k : new int[] {i - 1, i + 1}) {
      if (k < 0 || k >= row.leads()) {
        continue;
      }
      double gap = Math.min(gap(row, i, k, 0), gap(row, i, k, row.part.footLengthMm()));
      if (gap < CLEARANCE_MM) {
        return true;
      }
    }
    return false;
  }

  private static double gap(RowLayout row, int i, int k, double along) {
    if (row.spec.joints().get(i).condition() == Condition.MISSING
        || row.spec.joints().get(k).condition() == Condition.MISSING) {
      return Double.MAX_VALUE;
    }
    return Math.abs(place(row, i, along) - place(row, k, along)) - row.part.leadWidthMm();
  }

  private static double place(RowLayout row, int i, double along) {
    JointPlan joint = row.spec.joints().get(i);
    return row.part.landsAtMm()[i]
        + joint.pose().shiftMm()
        + along * Math.sin(joint.pose().skewRad());
  }

  /** A point of the foot's upper side: side -1 to 1 across, 0 heel to 1 toe. */
  private static PointPx foot(
      RowLayout row, Projection camera, LeadSolid lead, int i, double side, double t) {
    JointPlan joint = row.spec.joints().get(i);
    double b = t * row.part.footLengthMm();
    double a = side * row.part.leadWidthMm() / 2;
    double s = Math.sin(joint.pose().skewRad());
    double c = Math.cos(joint.pose().skewRad());
    double u = row.part.landsAtMm()[i] + joint.pose().shiftMm() + b * s + a * c;
    double v = -row.part.footLengthMm() + b * c - a * s;
    return seen(row, camera, i, u, v, lead.topAt(b));
  }

  /** A point of a joint's own frame in the picture. */
  private static PointPx seen(
      RowLayout row, Projection camera, int i, double u, double v, double z) {
    LiftFrame frame = row.frame(i);
    return frame == null ? camera.map(u, v, z) : camera.map(u, frame.rowV(v, z), frame.rowZ(v, z));
  }

  private static double[][] corners(RowLayout row, Projection camera, LeadSolid lead, int i) {
    return new double[][] {
      round(foot(row, camera, lead, i, -1, 1)),
      round(foot(row, camera, lead, i, 1, 1)),
      round(foot(row, camera, lead, i, 1, 0)),
      round(foot(row, camera, lead, i, -1, 0))
    };
  }

  static double[] round(PointPx p) {
    return new double[] {round(p.x()), round(p.y())};
  }

  static double round(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
