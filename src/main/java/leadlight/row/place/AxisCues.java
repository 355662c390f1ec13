package leadlight.row.place;

/**
 * What tells the middle of the leads, for each column of the typical foot: edges that match on both
 * sides, an even inside unlike the outside, and the middle of the land ahead. A shadow or a lit
 * flank on one side alone has no counterpart on the other.
 */
final class AxisCues {

  private static final double LEVELS = 10;

  private final Rows rows;
  private final Cues cues = new Cues();

  private AxisCues(int perPitch) {
    this.rows = new Rows(perPitch);
  }

  /**
   * @param foot colours of the columns of the typical foot
   * @param land the same of the land ahead of the toe
   * @param middle column of the lattice
   */
  static Cues of(double[][] foot, double[][] land, int middle, int perPitch) {
    AxisCues c = new AxisCues(perPitch);
    c.sides("foot", foot);
    c.edges("foot", foot, 0.15, 0.3);
    c.sides("land", land);
    c.edges("land", land, 0.22, 0.36);
    double[] off = new double[foot.length];
    for (int x = 0; x < off.length; x++) {
      off[x] = Math.abs(x - middle) / (double) perPitch;
    }
    c.cues.add("off", off);
    c.cues.add("off2", Rows.each(off, d -> d * d));
    c.cues.add("far_off", Rows.each(off, d -> Math.max(0, d - 0.15)));
    return c.cues;
  }

  private void sides(String name, double[][] p) {
    double[][] inside = rows.mean(p, -0.12, 0.12);
    double[][] left = rows.mean(p, -0.5, -0.36);
    double[][] right = rows.mean(p, 0.36, 0.5);
    double[] change = Rows.channels(rows.steps(p, 0.02), Math::abs);
    cues.add(name + "_uneven", Rows.log(rows.mean(change, -0.12, 0.12), LEVELS / 2));
    both(name + "_outside", Rows.distance(inside, left), Rows.distance(inside, right));
    differ(name + "_left_right", left, right);
    differ(name + "_shoulders", rows.mean(p, -0.32, -0.2), rows.mean(p, 0.2, 0.32));
    differ(name + "_halves", rows.mean(p, -0.16, -0.04), rows.mean(p, 0.04, 0.16));
    double[] brightness = Rows.channels(inside, s -> s);
    double[] l = Rows.channels(left, s -> s);
    double[] r = Rows.channels(right, s -> s);
    for (int x = 0; x < l.length; x++) {
      brightness[x] = (brightness[x] - (l[x] + r[x]) / 2) / 50;
    }
    cues.add(name + "_brighter", brightness);
  }

  /** Pairs of edges at equal distances; the lesser of the two counts. */
  private void edges(String name, double[][] p, double from, double to) {
    double[][] steps = rows.steps(p, 0.02);
    double[] change = Rows.channels(steps, Math::abs);
    double[] rise = Rows.channels(steps, s -> s);
    double[] fall = Rows.each(rise, s -> -s);
    pairs(name + "_edges", change, change, from, to);
    pairs(name + "_bright_edges", rise, fall, from, to);
    pairs(name + "_dark_edges", fall, rise, from, to);
    double[] unlike = new double[change.length];
    for (double d = 1.0 / rows.perPitch(); d <= to; d += 1.0 / rows.perPitch()) {
      double[] a = rows.shifted(change, -d);
      double[] b = rows.shifted(change, d);
      for (int x = 0; x < unlike.length; x++) {
        unlike[x] += Math.abs(a[x] - b[x]) / (to * rows.perPitch());
      }
    }
    cues.add(name + "_unlike", Rows.log(unlike, LEVELS / 2));
  }

  private void pairs(String name, double[] left, double[] right, double from, double to) {
    double[] best = new double[left.length];
    double[] sum = new double[left.length];
    for (double d = from; d <= to; d += 1.0 / rows.perPitch()) {
      double[] a = rows.shifted(left, -d);
      double[] b = rows.shifted(right, d);
      for (int x = 0; x < best.length; x++) {
        double lesser = Math.max(0, Math.min(a[x], b[x]));
        best[x] = Math.max(best[x], lesser);
        sum[x] += lesser;
      }
    }
    cues.add(name, Rows.log(best, LEVELS / 2));
    cues.add(name + "_all", Rows.log(sum, LEVELS / 2));
  }

  private void both(String name, double[] a, double[] b) {
    double[] lesser = new double[a.length];
    double[] larger = new double[a.length];
    for (int x = 0; x < a.length; x++) {
      lesser[x] = Math.min(a[x], b[x]);
      larger[x] = Math.max(a[x], b[x]);
    }
    cues.add(name + "_lesser", Rows.log(lesser, LEVELS));
    cues.add(name + "_larger", Rows.log(larger, LEVELS));
  }

  private void differ(String name, double[][] a, double[][] b) {
    cues.add(name, Rows.log(Rows.distance(a, b), LEVELS));
  }
}
