package leadlight.scene.chance;

/** Seeded noise that depends on nothing but its arguments, so that any thread sees the same. */
public final class Grain {

  private Grain() {}

  /** Even in [0, 1), from two lattice numbers (finaliser of MurmurHash3, public domain). */
  public static double hash(long seed, int x, int y) {
    return (mix(seed, x, y) >>> 11) * 0x1.0p-53;
  }

  /** Normal with unit deviation: twelve-bit sums of four, good to 3.4 deviations. */
  public static double normal(long seed, int x, int y) {
    long h = mix(seed, x, y);
    long sum = (h & 0xffff) + (h >>> 16 & 0xffff) + (h >>> 32 & 0xffff) + (h >>> 48);
    return (sum / 65535.0 - 2) * 1.7320508;
  }

  /** Smooth noise in [-1, 1] with one cell per unit. */
  public static double smooth(long seed, double x, double y) {
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    double fx = x - ix;
    double fy = y - iy;
    double sx = fx * fx * (3 - 2 * fx);
    double sy = fy * fy * (3 - 2 * fy);
    double top = hash(seed, ix, iy) * (1 - sx) + hash(seed, ix + 1, iy) * sx;
    double low = hash(seed, ix, iy + 1) * (1 - sx) + hash(seed, ix + 1, iy + 1) * sx;
    return 2 * (top * (1 - sy) + low * sy) - 1;
  }

  /** Three octaves of {@link #smooth}. */
  public static double cloud(long seed, double x, double y) {
    return (smooth(seed, x, y)
            + 0.5 * smooth(seed + 1, 2.03 * x, 2.03 * y)
            + 0.25 * smooth(seed + 2, 4.1 * x, 4.1 * y))
        / 1.75;
  }

  public static long mix(long seed, int x, int y) {
    long h = seed * 0x9E3779B97F4A7C15L + x * 0xC2B2AE3D27D4EB4FL + y * 0x165667B19E3779F9L;
    h = (h ^ h >>> 33) * 0xff51afd7ed558ccdL;
    h = (h ^ h >>> 33) * 0xc4ceb9fe1a85ec53L;
    return h ^ h >>> 33;
  }
}
