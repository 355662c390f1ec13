package leadlight.row.strip;

import java.util.ArrayList;
import java.util.List;

/**
 * How the leads lean against a strip's columns.
 *
 * @param mean shift along the row per pitch along the leads, pitches, modulo half a turn of phase
 * @param u its standard uncertainty, by how the bands disagree and how few they are
 */
public record Lean(double mean, double u) {

  /** Bands apart whose phases are compared; neighbours share edges. */
  private static final int STEP = 2;

  /**
   * Uncertainty that a single step leaves, pitches a pitch; common practice, no source: between two
   * bands that lie half a pitch apart a glint moves a lead's middle by a twentieth of a pitch.
   */
  private static final double OF_ONE = 0.1;

  private record Turn(double rad, double weight) {}

  public static Lean of(Waves waves, Zone zone) {
    List<Turn> turns = turns(waves, zone);
    double re = 0;
    double im = 0;
    double sum = 0;
    double squares = 0;
    for (Turn t : turns) {
      re += t.weight * Math.cos(t.rad);
      im += t.weight * Math.sin(t.rad);
      sum += t.weight;
      squares += t.weight * t.weight;
    }
    if (sum == 0) {
      return new Lean(0, Double.POSITIVE_INFINITY);
    }
    double mean = Math.atan2(im, re);
    double off = 0;
    for (Turn t : turns) {
      double d = Math.IEEEremainder(t.rad - mean, 2 * Math.PI);
      off += t.weight * d * d;
    }
    // Doubled phases, and as many bands as are compared overlap.
    double perPitch = 1 / (4 * Math.PI * STEP * Waves.BAND_V);
    double steps = sum * sum / squares;
    double spread = Math.sqrt(off / sum / steps * STEP) * perPitch;
    return new Lean(mean * perPitch, Math.hypot(spread, OF_ONE / steps));
  }

  private static List<Turn> turns(Waves waves, Zone zone) {
    List<Turn> turns = new ArrayList<>();
    for (int b = 0; b + STEP < waves.bands; b++) {
      if (zone.holds(waves.v(b)) && zone.holds(waves.v(b + STEP))) {
        double[] p = waves.lock(b);
        double[] q = waves.lock(b + STEP);
        turns.add(new Turn(2 * (q[1] - p[1]), p[0] * q[0]));
      }
    }
    return turns;
  }

  /** What share of the mean to believe, where leads lean so much by themselves. */
  public double trust(double usual) {
    return usual * usual / (usual * usual + u * u);
  }
}
