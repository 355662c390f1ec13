package leadlight.joint.cut;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.dirt.DirtLimits;
import leadlight.joint.place.PlacedRow;
import leadlight.joint.place.StraightRow;
import leadlight.joint.signal.DirtSignals;
import leadlight.joint.signal.RowSignals;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;

/** A row of plain drawn joints: board, land, fillet, lead, and what a test lays on them. */
final class DirtyRow {

  static final RowGeometry GEOMETRY = new RowGeometry(0.2, 0.3, 0.6, -2.0);
  static final int[] BROWN = {110, 70, 15};
  static final int[] SOLDER = {150, 150, 150};

  private static final RowLight LIGHT = new RowLight(20, 200);

  private final int[] board;
  private final float[][][] joints;

  DirtyRow(int count, int... board) {
    this.board = board;
    this.joints = new float[count][PatchGrid.WIDTH * PatchGrid.HEIGHT][];
    for (float[][] joint : joints) {
      for (int at = 0; at < joint.length; at++) {
        joint[at] = clean(x(at), y(at));
      }
    }
  }

  private float[] clean(double x, double y) {
    double across = Math.abs(x - Math.rint(x));
    if (across <= 0.2 && y <= 0) {
      return grey(170);
    }
    boolean fillet = y > 0.05 && y < 0.2;
    return across <= 0.3 && y <= 0.6
        ? grey(fillet ? 220 : 140)
        : new float[] {board[0], board[1], board[2]};
  }

  static float[] grey(double level) {
    return new float[] {(float) level, (float) level, (float) level};
  }

  private static double x(int at) {
    return at % PatchGrid.WIDTH / (double) PatchGrid.DENSITY - PatchGrid.X_HALF;
  }

  private static double y(int at) {
    return at / PatchGrid.WIDTH / (double) PatchGrid.DENSITY + PatchGrid.Y_FROM;
  }

  /** Paints an ellipse, in pitches about the middle of a joint's land, on every patch it is on. */
  DirtyRow ellipse(int joint, double x, double y, double halfX, double halfY, int... colour) {
    for (int i = 0; i < joints.length; i++) {
      for (int at = 0; at < joints[i].length; at++) {
        double dx = (x(at) + i - joint - x) / halfX;
        double dy = (y(at) - y) / halfY;
        if (dx * dx + dy * dy <= 1) {
          joints[i][at] = new float[] {colour[0], colour[1], colour[2]};
        }
      }
    }
    return this;
  }

  /** A ball mirrors the dark board at its rim and the lamp in its middle. */
  DirtyRow ball(int joint, double x, double y, double radius) {
    return ellipse(joint, x, y, radius, radius, SOLDER)
        .ellipse(joint, x, y, radius / 2, radius / 2, 250, 250, 250);
  }

  DirtSignals dirt() {
    return dirt(GEOMETRY);
  }

  DirtSignals dirt(RowGeometry geometry) {
    List<JointPatch> patches = new ArrayList<>();
    for (int i = 0; i < joints.length; i++) {
      patches.add(patch(i));
    }
    PlacedRow placed = new PlacedRow(geometry, List.of());
    StraightRow straight = StraightRow.of(patches, geometry, LIGHT);
    RowSignals row = new RowSignals(straight, List.of(), List.of(), placed);
    return DirtSignals.of(row, DirtLimits.builtIn());
  }

  private JointPatch patch(int joint) {
    float[] light = new float[joints[joint].length];
    float[] redGreen = new float[light.length];
    float[] yellowBlue = new float[light.length];
    for (int at = 0; at < light.length; at++) {
      float[] rgb = joints[joint][at];
      light[at] = (rgb[0] + rgb[1] + rgb[2]) / 3;
      redGreen[at] = rgb[0] - rgb[1];
      yellowBlue[at] = (rgb[0] + rgb[1]) / 2 - rgb[2];
    }
    PointPx toe = new PointPx(40 * joint, 0);
    PointPx heel = new PointPx(40 * joint, -80);
    Lead lead = new Lead(joint + 1, toe, heel, new PointPx(40 * joint, 24), heel, 1, 0.2, 0.2);
    return new JointPatch(
        lead,
        light,
        redGreen,
        yellowBlue,
        light,
        redGreen,
        yellowBlue,
        0,
        0,
        0.6,
        -2,
        -2.2,
        40,
        40,
        0);
  }
}
