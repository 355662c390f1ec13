package leadlight.photo.jpeg;

/**
 * How far a block lies from what 8-bit samples can give. Rounding a coefficient moves it by half a
 * divisor at most and the transform keeps lengths, so no block that was made from samples lies
 * farther from their range than a quarter of the sum of its squared divisors (squared distance).
 */
final class BlockRange {

  private static final double LOWEST = -128;
  private static final double HIGHEST = 127;

  private static final double[][] BASIS = new double[8][8];

  static {
    for (int x = 0; x < 8; x++) {
      for (int u = 0; u < 8; u++) {
        BASIS[x][u] = (u == 0 ? Math.sqrt(0.125) : 0.5) * Math.cos((2 * x + 1) * u * Math.PI / 16);
      }
    }
  }

  private final int[] divisors = new int[64];
  private final double room;
  private final double outsideMax;
  private final double highest;
  private final double[] halfWay = new double[64];

  /**
   * Takes the divisors by their place in the data. Some encoders let white overshoot against
   * ringing, and those with a fast transform err whatever the divisors are.
   */
  BlockRange(int[] byPlace, JpegLimits.Range limits) {
    double sum = 0;
    for (int place = 0; place < 64; place++) {
      divisors[Component.NATURAL[place]] = byPlace[place];
      sum += (double) byPlace[place] * byPlace[place];
    }
    room = sum + 64 * limits.fastTransform() * limits.fastTransform();
    outsideMax = limits.outsideMax();
    highest = HIGHEST + Math.min(limits.overshoot(), 2 * byPlace[0]);
  }

  /** Whether a block, values row by row, is one that no picture can hold. */
  boolean isBeyond(int[] values) {
    double reach = Math.abs(values[0] * divisors[0]) / 8.0;
    for (int i = 1; i < 64; i++) {
      reach += Math.abs(values[i] * divisors[i]) / 4.0;
    }
    return reach > HIGHEST && distance(values) > outsideMax * room;
  }

  private double distance(int[] values) {
    for (int v = 0; v < 8; v++) {
      for (int x = 0; x < 8; x++) {
        double sum = 0;
        for (int u = 0; u < 8; u++) {
          sum += values[v * 8 + u] * (double) divisors[v * 8 + u] * BASIS[x][u];
        }
        halfWay[v * 8 + x] = sum;
      }
    }
    double squares = 0;
    for (int y = 0; y < 8; y++) {
      for (int x = 0; x < 8; x++) {
        double sample = 0;
        for (int v = 0; v < 8; v++) {
          sample += halfWay[v * 8 + x] * BASIS[y][v];
        }
        double outside = Math.max(0, Math.max(sample - highest, LOWEST - sample));
        squares += outside * outside;
      }
    }
    return squares;
  }
}
