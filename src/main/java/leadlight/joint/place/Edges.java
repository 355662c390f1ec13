package leadlight.joint.place;

import leadlight.joint.cut.Stats;

/** How strong the edges along a profile are, all planes of light and colour together. */
final class Edges {

  private Edges() {}

  /**
   * Strength at each place of profiles of equal length: the root of the sum of the squared slopes
   * of the smoothed profiles, shares of the row's range a pitch.
   */
  static double[] of(double[][] profiles) {
    double[] strength = new double[profiles[0].length];
    for (double[] profile : profiles) {
      double[] slope = Stats.slope(Stats.smoothed(profile));
      for (int x = 0; x < strength.length; x++) {
        strength[x] += slope[x] * slope[x];
      }
    }
    for (int x = 0; x < strength.length; x++) {
      strength[x] = Math.sqrt(strength[x]);
    }
    return strength;
  }

  /** Strongest edge within a pixel of a place; 0 beyond the profile. */
  static double near(double[] edges, int x) {
    double strongest = 0;
    for (int i = Math.max(0, x - 1); i <= Math.min(edges.length - 1, x + 1); i++) {
      strongest = Math.max(strongest, edges[i]);
    }
    return strongest;
  }
}
