package leadlight.scene.light;

import java.util.List;

/**
 * What a surface sends towards the lens for every tilt of its normal, each azimuth sector apart.
 * Reflecting surfaces use the GGX microfacet lobe with Smith's masking (Walter, Marschner, Li and
 * Torrance 2007, equations 33 and 34; height-correlated form of Heitz 2014, equation 99); matte
 * ones Lambert's cosine over pi. Normals are stored by stereographic projection. One per thread.
 */
public final class LightTable {

  private static final int SIZE = 81;
  private static final int HALF = SIZE / 2;
  private static final int BAND = Light.SECTORS * 3;

  /** Squared radius out to which normals are looked up; 1 is level with the board. */
  private static final double SEEN = 1.15;

  private final float[] sectors;
  private final float[] whole;
  private final float[] mixed = new float[BAND];

  /** A table for one roughness; 0 or less makes the matte one. */
  public LightTable(Light light, double[] view, double alpha) {
    this.sectors = new float[SIZE * SIZE * Light.SECTORS * 3];
    this.whole = new float[SIZE * SIZE * 3];
    double[][] half = halfway(light, view);
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        fill(light, view, alpha, half, x, y);
      }
    }
  }

  private void fill(Light light, double[] view, double alpha, double[][] half, int x, int y) {
    double px = (x - HALF) / (double) HALF;
    double py = (y - HALF) / (double) HALF;
    double r2 = px * px + py * py;
    if (r2 > SEEN) {
      return;
    }
    double nz = (1 - r2) / (1 + r2);
    double nu = 2 * px / (1 + r2);
    double nv = 2 * py / (1 + r2);
    double a2 = alpha * alpha;
    double see = Math.max(0.02, nu * view[0] + nv * view[1] + nz * view[2]);
    double seeMask = Math.sqrt(see * see * (1 - a2) + a2);
    int at = (y * SIZE + x) * BAND;
    int sum = (y * SIZE + x) * 3;
    List<Light.Ray> rays = light.rays();
    for (int i = 0; i < half.length; i++) {
      Light.Ray ray = rays.get(i);
      double nl = nu * ray.u() + nv * ray.v() + nz * ray.z();
      if (nl <= 0) {
        continue;
      }
      double nh = nu * half[i][0] + nv * half[i][1] + nz * half[i][2];
      double f = alpha > 0 ? lobe(nl, nh, see, seeMask, a2) : nl / Math.PI;
      int k = at + ray.sector() * 3;
      sectors[k] += (float) (f * ray.red());
      sectors[k + 1] += (float) (f * ray.green());
      sectors[k + 2] += (float) (f * ray.blue());
      whole[sum] += (float) (f * ray.red());
      whole[sum + 1] += (float) (f * ray.green());
      whole[sum + 2] += (float) (f * ray.blue());
    }
  }

  private static double lobe(double nl, double nh, double see, double seeMask, double a2) {
    double d = nh * nh * (a2 - 1) + 1;
    double spread = a2 / (Math.PI * d * d);
    double mask = 0.5 / (nl * seeMask + see * Math.sqrt(nl * nl * (1 - a2) + a2));
    return spread * mask * nl;
  }

  /** Unit vectors half way between the view and each ray. */
  private static double[][] halfway(Light light, double[] view) {
    double[][] out = new double[light.rays().size()][];
    for (int i = 0; i < out.length; i++) {
      Light.Ray ray = light.rays().get(i);
      double u = ray.u() + view[0];
      double v = ray.v() + view[1];
      double z = ray.z() + view[2];
      double length = Math.sqrt(u * u + v * v + z * z);
      out[i] = new double[] {u / length, v / length, z / length};
    }
    return out;
  }

  /** Radiance for a normal with each sector's light dimmed to its share; null for no shadow. */
  public void look(double nu, double nv, double nz, double[] share, double[] rgb) {
    double scale = HALF / (1 + Math.max(0, nz));
    double x = Math.max(0, Math.min(SIZE - 1.001, nu * scale + HALF));
    double y = Math.max(0, Math.min(SIZE - 1.001, nv * scale + HALF));
    int ix = (int) x;
    int iy = (int) y;
    float fx = (float) (x - ix);
    float fy = (float) (y - iy);
    int node = iy * SIZE + ix;
    if (share == null) {
      blend(whole, 3, node, fx, fy);
      for (int c = 0; c < 3; c++) {
        rgb[c] = mixed[c];
      }
      return;
    }
    blend(sectors, BAND, node, fx, fy);
    rgb[0] = 0;
    rgb[1] = 0;
    rgb[2] = 0;
    for (int s = 0; s < Light.SECTORS; s++) {
      rgb[0] += share[s] * mixed[3 * s];
      rgb[1] += share[s] * mixed[3 * s + 1];
      rgb[2] += share[s] * mixed[3 * s + 2];
    }
  }

  /** The four nodes round a place, mixed; one plain loop, so that it runs several wide. */
  private void blend(float[] table, int band, int node, float fx, float fy) {
    float nw = (1 - fx) * (1 - fy);
    float ne = fx * (1 - fy);
    float sw = (1 - fx) * fy;
    float se = fx * fy;
    int top = node * band;
    int low = (node + SIZE) * band;
    float[] out = mixed;
    for (int k = 0; k < band; k++) {
      out[k] =
          nw * table[top + k]
              + ne * table[top + band + k]
              + sw * table[low + k]
              + se * table[low + band + k];
    }
  }
}
