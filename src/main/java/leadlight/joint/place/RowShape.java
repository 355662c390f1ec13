package leadlight.joint.place;

import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.TypicalJoint;
import leadlight.numeric.Parabola;

/**
 * What a row's median joint shows of its leads' edges, its lands' sides and the toe: signals of how
 * far the row as a whole is from where it was found. All lengths in pitches, light as shares of the
 * row's range.
 */
final class RowShape {

  /** How far from where they are expected edges are sought. */
  private static final double REACH = 0.12;

  /** Just outside and inside of an edge. */
  private static final double OUTSIDE = 0.14;

  private static final double INSIDE = 0.06;

  /** Added to strengths of edges whose ratio or logarithm is taken. */
  private static final double LEAST = 0.1;

  /** Where the profile along the lead's middle is read, about the toe. */
  private static final double[] ABOUT_TOE = {-0.12, -0.08, -0.04, 0, 0.04, 0.08, 0.12, 0.18, 0.26};

  private final RowGeometry geometry;
  private final double middle;
  private final float[][] planes;
  private final Signals signals = new Signals();

  private RowShape(TypicalJoint typical, RowGeometry geometry, double middle) {
    this.geometry = geometry;
    this.middle = middle;
    this.planes = new float[][] {typical.light(), typical.redGreen(), typical.yellowBlue()};
  }

  /**
   * The signals.
   *
   * @param middle the leads' usual offset from their lands
   */
  static Signals of(TypicalJoint typical, RowGeometry geometry, FootBands bands, double middle) {
    RowShape shape = new RowShape(typical, geometry, middle);
    shape.feet("toe", -0.45, -0.08);
    shape.feet("foot", 0.75 * bands.end(), -0.45);
    shape.lands();
    shape.toes();
    shape.put("offset", middle);
    shape.put("lead_half", geometry.leadHalf());
    shape.put("land_half", geometry.landHalf());
    shape.put("ahead", geometry.ahead());
    shape.put("heel", geometry.heelY());
    return shape.signals;
  }

  private void put(String name, double value) {
    signals.put("place_" + name, value);
  }

  /** Means over a stretch of rows, plane by plane. */
  private double[][] across(double y0, double y1) {
    double[][] profiles = new double[planes.length][PatchGrid.WIDTH];
    int top = PatchGrid.row(Math.min(y0, y1));
    int bottom = PatchGrid.row(Math.max(y0, y1));
    for (int plane = 0; plane < planes.length; plane++) {
      for (int y = top; y <= bottom; y++) {
        for (int x = 0; x < PatchGrid.WIDTH; x++) {
          profiles[plane][x] += planes[plane][y * PatchGrid.WIDTH + x] / (bottom - top + 1);
        }
      }
    }
    return profiles;
  }

  private void feet(String name, double y0, double y1) {
    double[][] profiles = across(y0, y1);
    double half = geometry.leadHalf();
    double[] edges = Edges.of(profiles);
    Peak low = peak(edges, middle - half);
    Peak high = peak(edges, middle + half);
    put(name + "_middle", (low.x + high.x) / 2 - middle);
    put(name + "_width", (high.x - low.x) / 2 - half);
    put(name + "_edge", Math.log(low.strength + LEAST));
    put(name + "_edges", Math.log((high.strength + 2 * LEAST) / (low.strength + 2 * LEAST)));
    put(name + "_middle_light", middleOf(profiles[0], half));
    put(name + "_middle_yellow", middleOf(profiles[2], half));
    double[] light = profiles[0];
    double below = at(light, middle - half - OUTSIDE);
    double above = at(light, middle + half + OUTSIDE);
    put(name + "_outside", above - below);
    put(name + "_inside", at(light, middle + half - INSIDE) - at(light, middle - half + INSIDE));
    put(name + "_light", at(light, middle) - (below + above) / 2);
    mirror(name, profiles);
  }

  private double middleOf(double[] profile, double half) {
    double[] edges = Edges.of(new double[][] {profile});
    return (peak(edges, middle - half).x + peak(edges, middle + half).x) / 2 - middle;
  }

  /** The axis about which light and colour are most alike on both sides, and how alike. */
  private void mirror(String name, double[][] profiles) {
    double best = Double.POSITIVE_INFINITY;
    double axis = 0;
    for (int step = -6; step <= 6; step++) {
      double shift = step / (2.0 * PatchGrid.DENSITY);
      double sum = 0;
      for (int i = 1; i <= 26; i++) {
        double x = i * 0.016;
        for (int plane : new int[] {0, 2}) {
          double difference =
              between(profiles[plane], middle + shift + x)
                  - between(profiles[plane], middle + shift - x);
          sum += difference * difference / 26;
        }
      }
      if (sum < best) {
        best = sum;
        axis = shift;
      }
    }
    put(name + "_axis", axis);
    put(name + "_unlike", Math.sqrt(best));
  }

  private void lands() {
    double half = geometry.landHalf();
    double[] edges = Edges.of(across(0.3 * geometry.ahead(), 0.85 * geometry.ahead()));
    Peak low = peak(edges, -half);
    Peak high = peak(edges, half);
    put("land_middle", (low.x + high.x) / 2);
    put("land_width", (high.x - low.x) / 2 - half);
    put("land_edge", Math.log(Math.min(low.strength, high.strength) + LEAST));
  }

  private void toes() {
    double[][] profiles = along();
    double[] light = profiles[0];
    for (int plane : new int[] {0, 2}) {
      double[] slope = Stats.slope(Stats.smoothed(profiles[plane]));
      String name = plane == 0 ? "light" : "yellow";
      putPeak(name + "_rise", slope, -0.16, 0.22);
      putPeak(name + "_fall", Stats.negated(slope), -0.16, 0.22);
    }
    putPeak("step", Edges.of(profiles), -0.16, 0.16);
    double top = mean(light, -0.5, -0.2);
    for (double y : ABOUT_TOE) {
      put("at_" + Math.round(100 * y), light[PatchGrid.row(y)] - top);
    }
    put("top", top);
    put("land_light", light[PatchGrid.row(0.5 * geometry.ahead())] - top);
    extremes(light, top);
  }

  /** Darkest and brightest about the toe, and where. */
  private void extremes(double[] light, double top) {
    int first = PatchGrid.row(-0.1);
    int darkest = first;
    int brightest = first;
    for (int y = first; y <= PatchGrid.row(0.25); y++) {
      darkest = light[y] < light[darkest] ? y : darkest;
      brightest = light[y] > light[brightest] ? y : brightest;
    }
    put("darkest", light[darkest] - top);
    put("darkest_at", y(darkest));
    put("brightest", light[brightest] - top);
    put("brightest_at", y(brightest));
  }

  private double[][] along() {
    int left = PatchGrid.column(middle - REACH);
    int right = PatchGrid.column(middle + REACH);
    double[][] profiles = new double[planes.length][PatchGrid.HEIGHT];
    for (int plane = 0; plane < planes.length; plane++) {
      for (int y = 0; y < PatchGrid.HEIGHT; y++) {
        for (int x = left; x <= right; x++) {
          profiles[plane][y] += planes[plane][y * PatchGrid.WIDTH + x] / (right - left + 1);
        }
      }
    }
    return profiles;
  }

  private static double mean(double[] profile, double y0, double y1) {
    double sum = 0;
    for (int y = PatchGrid.row(y0); y <= PatchGrid.row(y1); y++) {
      sum += profile[y];
    }
    return sum / (PatchGrid.row(y1) - PatchGrid.row(y0) + 1);
  }

  private void putPeak(String name, double[] profile, double y0, double y1) {
    double at = refined(profile, PatchGrid.row(y0), PatchGrid.row(y1));
    put(name + "_at", at / PatchGrid.DENSITY + PatchGrid.Y_FROM);
    put(name, profile[(int) Math.rint(at)]);
  }

  private record Peak(double x, double strength) {}

  private static Peak peak(double[] profile, double about) {
    double at = refined(profile, PatchGrid.column(about - REACH), PatchGrid.column(about + REACH));
    return new Peak(at / PatchGrid.DENSITY - PatchGrid.X_HALF, profile[(int) Math.rint(at)]);
  }

  /** Place of the greatest value from first to last, by a parabola. */
  private static double refined(double[] values, int first, int last) {
    int best = first;
    for (int i = first; i <= last; i++) {
      best = values[i] > values[best] ? i : best;
    }
    return best == first || best == last ? best : Parabola.peak(values, best);
  }

  private static double at(double[] profile, double x) {
    return profile[PatchGrid.column(x)];
  }

  private static double between(double[] profile, double x) {
    double at =
        Math.max(0, Math.min(profile.length - 1.001, (x + PatchGrid.X_HALF) * PatchGrid.DENSITY));
    int low = (int) at;
    return profile[low] + (at - low) * (profile[low + 1] - profile[low]);
  }

  private static double y(int row) {
    return row / (double) PatchGrid.DENSITY + PatchGrid.Y_FROM;
  }
}
