package leadlight.scene.light;

import java.util.Arrays;
import java.util.Optional;

/**
 * How high the surroundings stand, in each sector, seen from every place of a coarse height map;
 * and how much of each sector's light comes from above that. The body's boxes are met exactly,
 * leads and solder within {@value #REACH} cells.
 */
public final class Horizon {

  private static final int BINS = 64;
  private static final int SOFT = 2;
  private static final int REACH = 29;
  private static final int[] STEPS = {1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 24, REACH};
  private static final double SAME_LEVEL_MM = 0.04;

  /** Above this share of its light a sector counts as clear. */
  private static final double CLEAR = 0.99;

  private final HeightMap map;
  private final Roof body;
  private final Light light;
  private final byte[] angle;
  private final Optional<float[]> past;
  private final double[] skyline = new double[Light.SECTORS];
  private final double[] free = new double[Light.SECTORS];
  private final double[] above = new double[Light.SECTORS * (BINS + 1)];

  public Horizon(HeightMap map, Roof body, Light light) {
    this(map, body, light, Optional.empty());
  }

  /**
   * Looks round.
   *
   * @param screen what else shades single directions, met exactly
   */
  public Horizon(HeightMap map, Roof body, Light light, Optional<? extends Screen> screen) {
    this.map = map;
    this.body = body;
    this.light = light;
    this.angle = new byte[map.width * map.height * Light.SECTORS];
    for (int s = 0; s < Light.SECTORS; s++) {
      sweep(s);
      cumulate(s);
    }
    this.past = screen.map(this::past);
  }

  /** Share of each sector's light that gets past a screen, cell by cell. */
  private float[] past(Screen screen) {
    float[] past = new float[map.width * map.height * Light.SECTORS];
    double[] all = new double[Light.SECTORS];
    double[] free = new double[Light.SECTORS];
    for (int i = 0; i < map.z.length; i++) {
      Arrays.fill(all, 0);
      Arrays.fill(free, 0);
      double u = map.u(i % map.width);
      double v = map.v(i / map.width);
      for (Light.Ray ray : light.rays()) {
        double power = ray.green() * ray.z();
        all[ray.sector()] += power;
        boolean hidden = screen.hides(u, v, map.z[i], ray.u(), ray.v(), ray.z());
        free[ray.sector()] += hidden ? 0 : power;
      }
      for (int s = 0; s < Light.SECTORS; s++) {
        past[i * Light.SECTORS + s] = (float) (all[s] > 0 ? free[s] / all[s] : 1);
      }
    }
    return past;
  }

  private void cumulate(int s) {
    double[] power = new double[BINS + 1];
    for (Light.Ray ray : light.rays()) {
      if (ray.sector() == s) {
        double steepness = ray.z() / Math.max(1e-6, Math.hypot(ray.u(), ray.v()));
        int bin = (int) (rank(steepness) * (BINS - 1));
        for (int k = -SOFT; k <= SOFT; k++) {
          power[Math.max(0, Math.min(BINS, bin + k))] += ray.green() * ray.z();
        }
      }
    }
    double sum = 0;
    for (double p : power) {
      sum += p;
    }
    double run = 0;
    for (int k = BINS; k >= 0; k--) {
      run += power[k];
      above[s * (BINS + 1) + k] = sum > 0 ? run / sum : 1;
    }
  }

  private void sweep(int s) {
    double[][] ways = new double[4][];
    for (int k = 0; k < 4; k++) {
      double azimuth = light.azimuth(s) + (k < 3 ? k - 1 : 0) * Math.PI * 2 / 3 / Light.SECTORS;
      ways[k] = new double[] {Math.cos(azimuth) + 1e-9, Math.sin(azimuth) + 1e-9};
    }
    int[] dx = offsets(ways[3][0]);
    int[] dy = offsets(ways[3][1]);
    for (int y = 0; y < map.height; y++) {
      for (int x = 0; x < map.width; x++) {
        double boxes = 0;
        for (int k = 0; k < 3; k++) {
          boxes += rank(boxes(x, y, ways[k])) / 3;
        }
        double small = map.lonely(x, y) ? 0 : rank(steepest(x, y, dx, dy));
        angle[(y * map.width + x) * Light.SECTORS + s] =
            (byte) Math.round(255 * Math.max(boxes, small));
      }
    }
  }

  private double boxes(int x, int y, double[] way) {
    return body.steepness(map.u(x), map.v(y), map.z[y * map.width + x], way[0], way[1]);
  }

  private static int[] offsets(double way) {
    return Arrays.stream(STEPS).map(step -> (int) Math.round(way * step)).toArray();
  }

  private double steepest(int x, int y, int[] dx, int[] dy) {
    float here = map.z[y * map.width + x];
    double steepest = 0;
    for (int k = 0; k < STEPS.length; k++) {
      int xx = x + dx[k];
      int yy = y + dy[k];
      if (xx < 0 || yy < 0 || xx >= map.width || yy >= map.height) {
        break;
      }
      double rise = map.low(xx, yy) - here;
      steepest = Math.max(steepest, rise / (STEPS[k] * map.cell));
    }
    return steepest;
  }

  /** A steepness (tangent of the elevation) on a scale from 0 to 1 that needs no arc tangent. */
  private static double rank(double steepness) {
    return steepness / (1 + steepness);
  }

  /**
   * Writes the horizon's {@link #sine rank} and the visible share of each sector's light; returns
   * false where nothing stands above. Only neighbours on the surface's own level count, so that a
   * lead's edge stays sharp.
   */
  boolean shares(double u, double v, double z, double[] horizon, double[] share) {
    double x = map.column(u);
    double y = map.row(v);
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    Arrays.fill(horizon, 0);
    Arrays.fill(free, 0);
    double total = 0;
    for (int k = 0; k < 4; k++) {
      int cx = clamp(ix + (k & 1), map.width);
      int cy = clamp(iy + (k >> 1), map.height);
      double near = Math.abs(map.z[cy * map.width + cx] - z) < SAME_LEVEL_MM ? 1 : 1e-3;
      double fx = Math.min(1, Math.max(0, x - ix));
      double fy = Math.min(1, Math.max(0, y - iy));
      double w = near * ((k & 1) == 0 ? 1 - fx : fx) * (k >> 1 == 0 ? 1 - fy : fy) + 1e-9;
      int at = (cy * map.width + cx) * Light.SECTORS;
      for (int s = 0; s < Light.SECTORS; s++) {
        horizon[s] += w * (angle[at + s] & 255);
        free[s] += past.isPresent() ? w * past.get()[at + s] : w;
      }
      total += w;
    }
    return light(horizon, total, share);
  }

  /** Sine of the elevation whose tangent has a rank. */
  static double sine(double rank) {
    double flat = 1 - rank;
    return rank / Math.sqrt(rank * rank + flat * flat);
  }

  private boolean light(double[] horizon, double total, double[] share) {
    boolean blocked = false;
    for (int s = 0; s < Light.SECTORS; s++) {
      double wide = 0.5 * horizon[s] + 0.25 * horizon[(s + 1) % Light.SECTORS];
      skyline[s] = wide + 0.25 * horizon[(s + Light.SECTORS - 1) % Light.SECTORS];
    }
    for (int s = 0; s < Light.SECTORS; s++) {
      double level = skyline[s] / total / 255;
      horizon[s] = level;
      double bin = level * (BINS - 1);
      int k = (int) bin;
      double f = bin - k;
      int at = s * (BINS + 1) + k;
      share[s] = (above[at] * (1 - f) + above[at + 1] * f) * free[s] / total;
      blocked |= share[s] < CLEAR;
    }
    return blocked;
  }

  private static int clamp(int i, int size) {
    return Math.max(0, Math.min(size - 1, i));
  }
}
