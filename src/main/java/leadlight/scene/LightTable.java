package leadlight.scene;

/**
 * What a surface sends towards the lens for every tilt of its normal, each azimuth sector apart.
 * Reflecting surfaces use the GGX microfacet lobe with Smith's masking (Walter, Marschner, Li and
 * Torrance 2007, equations 33 and 34; height-correlated form of Heitz 2014, equation 99); matte
 * ones Lambert's cosine over pi. Normals are stored by stereographic projection. One per thread.
 */
final class LightTable {

  private static final int SIZE = 81;
  private static final int HALF = SIZE / 2;
  private static final int BAND = Light.SECTORS * 3;

  private final float[] sectors;
  private final float[] whole;
  private final float[] mixed = new float[BAND];

  /** A table for one roughness; 0 or less makes the matte one. */
  LightTable(Light light, double[] view, double alpha) {
    this.sectors = new float[SIZE * SIZE * Light.SECTORS * 3];
    this.whole = new float[SIZE * SIZE * 3];
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        fill(light, view, alpha, x, y);
      }
    }
  }

  private void fill(Light light, double[] view, double alpha, int x, int y) {
    double px = (x - HALF) / (double) HALF;
    double py = (y - HALF) / (double) HALF;
    double r2 = px * px + py * py;
    double nz = (1 - r2) / (1 + r2);
    double nu = 2 * px / (1 + r2);
    double nv = 2 * py / (1 + r2);
    int at = (y * SIZE + x) * Light.SECTORS * 3;
    int sum = (y * SIZE + x) * 3;
    for (Light.Ray ray : light.rays()) {
      double nl = nu * ray.u() + nv * ray.v() + nz * ray.z();
      if (nl <= 0) {
        continue;
      }
      double f = alpha > 0 ? lobe(nu, nv, nz, nl, ray, view, alpha * alpha) : nl / Math.PI;
      int k = at + ray.sector() * 3;
      sectors[k] += (float) (f * ray.red());
      sectors[k + 1] += (float) (f * ray.green());
      sectors[k + 2] += (float) (f * ray.blue());
      whole[sum] += (float) (f * ray.red());
      whole[sum + 1] += (float) (f * ray.green());
      whole[sum + 2] += (float) (f * ray.blue());
    }
  }

  private static double lobe(
      double nu, double nv, double nz, double nl, Light.Ray ray, double[] view, double a2) {
    double hu = ray.u() + view[0];
    double hv = ray.v() + view[1];
    double hz = ray.z() + view[2];
    double nh = (nu * hu + nv * hv + nz * hz) / Math.sqrt(hu * hu + hv * hv + hz * hz);
    double see = Math.max(0.02, nu * view[0] + nv * view[1] + nz * view[2]);
    double d = nh * nh * (a2 - 1) + 1;
    double spread = a2 / (Math.PI * d * d);
    double mask =
        0.5
            / (nl * Math.sqrt(see * see * (1 - a2) + a2)
                + see * Math.sqrt(nl * nl * (1 - a2) + a2));
    return spread * mask * nl;
  }

  /** Radiance for a normal with each sector's light dimmed to its share; null for no shadow. */
  void look(double nu, double nv, double nz, double[] share, double[] rgb) {
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
