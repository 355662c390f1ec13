package leadlight.scene.solids;

import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.PartSpec;

/** Height and slope of all solder of a row, solved once and then looked up. */
public final class SolderField {

  private static final int[] SWEEPS = {90, 45, 30};

  private static final double MARGIN_MM = 0.12;

  private final RowLayout row;
  private final double cell;
  private final double u0;
  private final double v0;
  private final int width;
  private final int height;
  private final float[] h;
  private final float[] slopeU;
  private final float[] slopeV;

  public SolderField(RowLayout row, double cellMm) {
    this.row = row;
    this.cell = cellMm;
    double spread = MARGIN_MM;
    for (JointPlan joint : row.spec.joints()) {
      spread = Math.max(spread, MARGIN_MM + joint.fill().spreadMm());
    }
    PartSpec part = row.part;
    int last = row.leads() - 1;
    this.u0 = -part.landWidthMm()[0] / 2 - spread;
    this.v0 = row.landHeel() - spread;
    double uEnd = part.landsAtMm()[last] + part.landWidthMm()[last] / 2 + spread;
    this.width = CapillarySteps.multiple((uEnd - u0) / cell);
    this.height = CapillarySteps.multiple((part.landAheadMm() + spread - v0) / cell);
    CapillarySolver fine =
        new CapillarySteps(u0, v0, width, height, cell, 0).solve(SWEEPS, this::fillCell);
    boolean[] known = free(fine);
    extend(fine.h, known);
    extend(fine.h, known);
    this.h = toFloat(fine.h);
    this.slopeU = slopes(fine.h, 1);
    this.slopeV = slopes(fine.h, width);
  }

  private void fillCell(CapillarySolver grid, int k, double u, double v) {
    int i = row.nearest(u);
    JointPlan joint = row.spec.joints().get(i);
    Bridge bridge = row.spec.bridges().isEmpty() ? null : row.bridgeAt(u, v);
    boolean own = row.wetted(i, u, v);
    grid.wet[k] = own || bridge != null;
    if (own) {
      grid.pressure[k] = joint.fill().pressurePerMm();
      grid.floor[k] = floor(i, u, v);
    }
    if (own && bridge == null) {
      cut(grid, k, i, u, v, grid.cell);
    }
    if (bridge != null) {
      grid.pressure[k] = bridge.pressurePerMm();
    }
  }

  /** Places the land's edge and the lead's walls between the cells. */
  private void cut(CapillarySolver grid, int k, int i, double u, double v, double d) {
    double land = row.insideLand(i, u, v, row.spec.joints().get(i).fill().spreadMm());
    boolean climbs = climbs(i);
    double wall = climbs ? -row.insideFoot(i, u, v) : 1;
    if (land > 1.5 * d && Math.abs(wall) > 1.5 * d) {
      return;
    }
    for (int way = 0; way < 4; way++) {
      double uu = u + (way == 0 ? d : way == 1 ? -d : 0);
      double vv = v + (way == 2 ? d : way == 3 ? -d : 0);
      double landThere = row.insideLand(i, uu, vv, row.spec.joints().get(i).fill().spreadMm());
      double wallThere = climbs ? -row.insideFoot(i, uu, vv) : 1;
      double reach = 1;
      if (landThere < 0) {
        reach = land / (land - landThere);
      } else if (wall > 0 && wallThere < 0) {
        reach = wall / (wall - wallThere);
      }
      grid.reach[way][k] = (float) Math.max(0.12, reach);
    }
  }

  private boolean climbs(int i) {
    Condition condition = row.spec.joints().get(i).condition();
    return condition == Condition.WETTED || condition == Condition.STARVED;
  }

  private double floor(int i, double u, double v) {
    JointPlan joint = row.spec.joints().get(i);
    double film = Math.min(joint.fill().filmMm(), 0.5 * Math.max(0, row.insideLand(i, u, v, 0)));
    if (joint.condition() == Condition.OPEN || row.insideFoot(i, u, v) < 0) {
      return film;
    }
    return joint.fill().climb() * (joint.pose().gapMm() + row.part.leadThicknessMm());
  }

  /** Cells where the surface is solder, not the wall it climbs. */
  private boolean[] free(CapillarySolver fine) {
    boolean[] known = new boolean[width * height];
    for (int k = 0; k < known.length; k++) {
      double u = u0 + (k % width + 0.5) * cell;
      double v = v0 + (k / width + 0.5) * cell;
      boolean wall = fine.h[k] <= fine.floor[k] + 1e-9 && row.insideFoot(row.nearest(u), u, v) >= 0;
      known[k] = fine.wet[k] && !wall;
    }
    return known;
  }

  /** Continues the surface by one ring of cells, straight on. */
  private void extend(double[] z, boolean[] known) {
    boolean[] before = known.clone();
    for (int y = 2; y < height - 2; y++) {
      for (int x = 2; x < width - 2; x++) {
        int k = y * width + x;
        if (before[k]) {
          continue;
        }
        double sum = 0;
        int count = 0;
        for (int to : new int[] {1, -1, width, -width}) {
          if (before[k + to]) {
            sum += before[k + 2 * to] ? 2 * z[k + to] - z[k + 2 * to] : z[k + to];
            count++;
          }
        }
        if (count > 0) {
          z[k] = sum / count;
          known[k] = true;
        }
      }
    }
  }

  private float[] slopes(double[] z, int to) {
    float[] out = new float[z.length];
    for (int k = width; k < z.length - width; k++) {
      out[k] = (float) ((z[k + to] - z[k - to]) / (2 * cell));
    }
    return out;
  }

  private static float[] toFloat(double[] from) {
    float[] out = new float[from.length];
    for (int i = 0; i < from.length; i++) {
      out[i] = (float) from[i];
    }
    return out;
  }

  /** True where the joint's lead stands in the solder: no surface of it is to be seen. */
  public boolean underLead(int i, double u, double v) {
    return climbs(i) && row.insideFoot(i, u, v) > 0;
  }

  /** Height above the board; meaningful where solder is. */
  public double heightAt(double u, double v) {
    return at(h, u, v);
  }

  public double slopeUAt(double u, double v) {
    return at(slopeU, u, v);
  }

  public double slopeVAt(double u, double v) {
    return at(slopeV, u, v);
  }

  /** Highest solder under a foot that lies on it without being wetted. */
  public double seat(int i) {
    double top = 0;
    double length = row.part.footLengthMm();
    double sin = Math.sin(row.spec.joints().get(i).pose().skewRad());
    double heelU = row.part.landsAtMm()[i] + row.spec.joints().get(i).pose().shiftMm();
    for (double b = 0.05 * length; b < length; b += 2 * cell) {
      double u = heelU + b * sin;
      double v = b - length;
      if (row.wetted(i, u, v)) {
        top = Math.max(top, heightAt(u, v));
      }
    }
    return top;
  }

  private double at(float[] plane, double u, double v) {
    double x = (u - u0) / cell - 0.5;
    double y = (v - v0) / cell - 0.5;
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    if (ix < 0 || iy < 0 || ix >= width - 1 || iy >= height - 1) {
      return 0;
    }
    int k = iy * width + ix;
    double fx = x - ix;
    double fy = y - iy;
    return (plane[k] * (1 - fx) + plane[k + 1] * fx) * (1 - fy)
        + (plane[k + width] * (1 - fx) + plane[k + width + 1] * fx) * fy;
  }
}
