package leadlight.scene.camera;

import leadlight.numeric.Bilinear;

/** What a lens does to three planes of linear light: fringes, defocus, glow, uneven light. */
final class Optics {

  private static final double LEAST_BLUR_PX = 0.05;
  private static final int GLOW_BLOCK = 8;
  private static final int GLOW_PASSES = 3;

  private final CameraSpec.Lens lens;
  private final int width;
  private final int height;

  Optics(CameraSpec camera) {
    this.lens = camera.lens();
    this.width = camera.widthPx();
    this.height = camera.heightPx();
  }

  /** Changes the planes. */
  void pass(float[][] light) {
    if (lens.fringe() != 0) {
      light[0] = scaled(light[0], 1 / (1 + lens.fringe()));
      light[2] = scaled(light[2], 1 + lens.fringe());
    }
    for (float[] plane : light) {
      if (lens.blurPx() >= LEAST_BLUR_PX) {
        blur(plane);
      }
      if (lens.glow() > 0) {
        glow(plane);
      }
      fade(plane);
    }
  }

  /** Lateral chromatic aberration: the plane drawn larger or smaller about the middle. */
  private float[] scaled(float[] plane, double by) {
    float[] out = new float[plane.length];
    double cx = (width - 1) / 2.0;
    double cy = (height - 1) / 2.0;
    for (int y = 0; y < height; y++) {
      double sy = Math.max(0, Math.min(height - 1.001, cy + (y - cy) * by));
      int iy = (int) sy;
      float fy = (float) (sy - iy);
      for (int x = 0; x < width; x++) {
        double sx = Math.max(0, Math.min(width - 1.001, cx + (x - cx) * by));
        int ix = (int) sx;
        float fx = (float) (sx - ix);
        int k = iy * width + ix;
        out[y * width + x] =
            Bilinear.of(plane[k], plane[k + 1], plane[k + width], plane[k + width + 1], fx, fy);
      }
    }
    return out;
  }

  /** Gaussian, columns then rows; its width may change from left to right. */
  private void blur(float[] plane) {
    float[][] kernels = new float[width][];
    int reach = 0;
    for (int x = 0; x < width; x++) {
      boolean same = x > 0 && lens.blurSlope() == 0;
      kernels[x] = same ? kernels[0] : Smoothing.kernel(sigmaAt(x));
      reach = Math.max(reach, kernels[x].length / 2);
    }
    float[] half = new float[plane.length];
    for (int y = 0; y < height; y++) {
      for (int k = -reach; k <= reach; k++) {
        int from = Math.max(0, Math.min(height - 1, y + k)) * width;
        for (int x = 0; x < width; x++) {
          int at = k + kernels[x].length / 2;
          if (at >= 0 && at < kernels[x].length) {
            half[y * width + x] += kernels[x][at] * plane[from + x];
          }
        }
      }
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        plane[y * width + x] = Smoothing.along(half, kernels[x], y * width, width, x);
      }
    }
  }

  private double sigmaAt(int x) {
    return lens.blurPx() * (1 + lens.blurSlope() * (x / (double) width - 0.5));
  }

  /** Scattered light: the plane's wide means, mixed in. */
  private void glow(float[] plane) {
    int w = (width + GLOW_BLOCK - 1) / GLOW_BLOCK;
    int h = (height + GLOW_BLOCK - 1) / GLOW_BLOCK;
    float[] coarse = new float[w * h];
    int[] count = new int[w * h];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int k = y / GLOW_BLOCK * w + x / GLOW_BLOCK;
        coarse[k] += plane[y * width + x];
        count[k]++;
      }
    }
    for (int k = 0; k < coarse.length; k++) {
      coarse[k] /= count[k];
    }
    float[] kernel = Smoothing.kernel(Math.max(1, Math.min(w, h) / 12.0));
    for (int pass = 0; pass < GLOW_PASSES; pass++) {
      coarse = Smoothing.both(coarse, kernel, w, h);
    }
    float share = (float) lens.glow();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float wide = Smoothing.between(coarse, w, h, x, y, GLOW_BLOCK);
        plane[y * width + x] = (1 - share) * plane[y * width + x] + share * wide;
      }
    }
  }

  /** Vignetting, and a lamp that stands nearer to one side. */
  private void fade(float[] plane) {
    double diagonal = (width * (double) width + height * (double) height) / 4;
    for (int y = 0; y < height; y++) {
      double dy = y - height / 2.0;
      for (int x = 0; x < width; x++) {
        double dx = x - width / 2.0;
        double side = 2 * (lens.fadeRight() * dx + lens.fadeDown() * dy) / Math.max(width, height);
        double fall = 1 - lens.vignette() * (dx * dx + dy * dy) / diagonal;
        plane[y * width + x] *= (float) (fall * Math.max(0.1, 1 - side));
      }
    }
  }
}
