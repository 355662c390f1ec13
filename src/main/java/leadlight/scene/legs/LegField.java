package leadlight.scene.legs;

import leadlight.numeric.Bilinear;
import leadlight.scene.solids.CapillarySolver;
import leadlight.scene.solids.CapillarySteps;

/** Height and slope of the solder of one leg, solved once and then looked up. */
final class LegField {

  private static final int[] SWEEPS = {120, 60, 30};

  private static final double MARGIN_MM = 0.1;

  /**
   * How deep the surface falls where solder ends over the open hole. Common practice, no source.
   */
  private static final double BRINK_MM = 0.12;

  private final LegPlan plan;
  private final long seed;
  private final double cell;
  private final double x0;
  private final double y0;
  private final int width;
  private final int height;
  private final double[] h;
  private final boolean[] wet;

  LegField(LegPlan plan, long seed, double cellMm) {
    this.plan = plan;
    this.seed = seed;
    this.cell = cellMm;
    this.x0 = -plan.land().widthMm() / 2 - MARGIN_MM;
    this.y0 = -plan.land().heightMm() / 2 - MARGIN_MM;
    this.width = CapillarySteps.multiple(-2 * x0 / cell);
    this.height = CapillarySteps.multiple(-2 * y0 / cell);
    CapillarySolver fine =
        new CapillarySteps(x0, y0, width, height, cell, 1).solve(SWEEPS, this::fillCell);
    this.h = fine.h;
    this.wet = fine.wet.clone();
    spread();
  }

  private void fillCell(CapillarySolver grid, int k, double x, double y) {
    boolean covered = lump() ? plan.land().inside(x, y) > 0 : plan.wet(x, y, seed);
    boolean recessed = plan.condition() == LegPlan.Condition.RECESSED;
    boolean hole = plan.hole().inside(x, y) > 0;
    boolean leg = plan.leg().inside(x, y) > 0 && !lump();
    LegPlan.Fill solder = plan.solder();
    if (plan.soldered() && covered && !leg && (!recessed || hole)) {
      grid.wet[k] = true;
      grid.pressure[k] = solder.pressurePerMm();
      grid.floor[k] = recessed || hole ? -5 : 0;
    } else if (leg) {
      grid.h[k] = solder.moatMm() > 0 ? -BRINK_MM : legLine();
    } else if (recessed) {
      grid.h[k] = solder.climbMm();
    } else if (hole) {
      grid.h[k] = -BRINK_MM;
    }
  }

  private boolean lump() {
    return plan.condition() == LegPlan.Condition.EXCESS;
  }

  /** Where solder ends on the leg: no higher than its tip. */
  private double legLine() {
    double climb = plan.solder().climbMm();
    return Math.min(climb < 0 ? 0.55 * climb : climb, plan.leg().tipMm());
  }

  /** Continues the surface by two rings of cells, so that its slope holds to its edge. */
  private void spread() {
    boolean[] known = wet.clone();
    for (int ring = 0; ring < 2; ring++) {
      boolean[] before = known.clone();
      for (int k = 2 * width; k < h.length - 2 * width; k++) {
        if (!before[k]) {
          spreadTo(k, before, known);
        }
      }
    }
  }

  private void spreadTo(int k, boolean[] before, boolean[] known) {
    double sum = 0;
    int count = 0;
    for (int to : new int[] {1, -1, width, -width}) {
      if (before[k + to]) {
        sum += before[k + 2 * to] ? 2 * h[k + to] - h[k + 2 * to] : h[k + to];
        count++;
      }
    }
    if (count > 0) {
      h[k] = sum / count;
      known[k] = true;
    }
  }

  /** Whether solder is seen at a place; the leg stands above it where it does. */
  boolean wetAt(double x, double y) {
    if (!plan.soldered()) {
      return false;
    }
    boolean recessed = plan.condition() == LegPlan.Condition.RECESSED;
    return lump()
        ? plan.land().inside(x, y) > 0
        : plan.wet(x, y, seed) && (!recessed || plan.hole().inside(x, y) > 0);
  }

  double heightAt(double x, double y) {
    double column = (x - x0) / cell - 0.5;
    double row = (y - y0) / cell - 0.5;
    int ix = (int) Math.floor(column);
    int iy = (int) Math.floor(row);
    if (ix < 0 || iy < 0 || ix >= width - 1 || iy >= height - 1) {
      return 0;
    }
    int k = iy * width + ix;
    double fx = column - ix;
    double fy = row - iy;
    return Bilinear.of(h[k], h[k + 1], h[k + width], h[k + width + 1], fx, fy);
  }

  double slopeX(double x, double y) {
    return (heightAt(x + cell, y) - heightAt(x - cell, y)) / (2 * cell);
  }

  double slopeY(double x, double y) {
    return (heightAt(x, y + cell) - heightAt(x, y - cell)) / (2 * cell);
  }
}
