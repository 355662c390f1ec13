package leadlight.scene.camera;

import leadlight.numeric.Bilinear;

/** Gaussian weights and folds; borders repeat. */
final class Smoothing {

  private Smoothing() {}

  /** Weights out to 3.2 deviations, summing to 1. */
  static float[] kernel(double sigma) {
    int reach = (int) Math.ceil(3.2 * sigma);
    float[] out = new float[2 * reach + 1];
    double sum = 0;
    for (int k = -reach; k <= reach; k++) {
      out[k + reach] = (float) Math.exp(-k * k / (2 * sigma * sigma));
      sum += out[k + reach];
    }
    for (int k = 0; k < out.length; k++) {
      out[k] /= (float) sum;
    }
    return out;
  }

  /** One place of a line of a plane, folded along the line. */
  static float along(float[] plane, float[] kernel, int line, int width, int x) {
    int reach = kernel.length / 2;
    float sum = 0;
    if (x >= reach && x + reach < width) {
      for (int k = 0, at = line + x - reach; k < kernel.length; k++, at++) {
        sum += kernel[k] * plane[at];
      }
      return sum;
    }
    for (int k = -reach; k <= reach; k++) {
      sum += kernel[k + reach] * plane[line + Math.max(0, Math.min(width - 1, x + k))];
    }
    return sum;
  }

  /** A whole plane, folded both ways. */
  static float[] both(float[] plane, float[] kernel, int width, int height) {
    int reach = kernel.length / 2;
    float[] half = new float[plane.length];
    for (int y = 0; y < height; y++) {
      for (int k = -reach; k <= reach; k++) {
        int from = Math.max(0, Math.min(height - 1, y + k)) * width;
        float weight = kernel[k + reach];
        for (int x = 0; x < width; x++) {
          half[y * width + x] += weight * plane[from + x];
        }
      }
    }
    float[] out = new float[plane.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out[y * width + x] = along(half, kernel, y * width, width, x);
      }
    }
    return out;
  }

  /** A coarse plane between its blocks' middles, at a pixel of the fine one. */
  static float between(float[] coarse, int width, int height, int x, int y, int block) {
    float sx = Math.max(0, Math.min(width - 1.001f, (x + 0.5f) / block - 0.5f));
    float sy = Math.max(0, Math.min(height - 1.001f, (y + 0.5f) / block - 0.5f));
    int ix = (int) sx;
    int iy = (int) sy;
    float fx = sx - ix;
    float fy = sy - iy;
    int right = Math.min(ix + 1, width - 1);
    int low = Math.min(iy + 1, height - 1);
    return Bilinear.of(
        coarse[iy * width + ix],
        coarse[iy * width + right],
        coarse[low * width + ix],
        coarse[low * width + right],
        fx,
        fy);
  }
}
