package leadlight.scene;

import java.awt.image.BufferedImage;

/** From linear light on the sensor to the picture: optics, exposure, noise, colour, tone. */
final class Sensor {

  /** The camera dims a picture in which one pixel in so many would be ... */
  private static final int HIGHLIGHT = 25;

  /** ... brighter than this, white being 1. */
  private static final double BRIGHTEST = 1.5;

  private final SceneSpec.Camera camera;
  private final long seed;
  private final int width;
  private final int height;

  Sensor(SceneSpec spec) {
    this.camera = spec.camera();
    this.seed = spec.seed() + 80;
    this.width = camera.widthPx();
    this.height = camera.heightPx();
  }

  /** Takes three planes of linear light, which it changes. */
  BufferedImage expose(float[][] light) {
    for (float[] plane : light) {
      blur(plane);
    }
    double gain = Math.min(camera.exposure() / meanLevel(light), BRIGHTEST / highLevel(light[1]));
    double[] balance = {gain * camera.redGain(), gain, gain * camera.blueGain()};
    for (int c = 0; c < 3; c++) {
      develop(light[c], balance[c], c);
      if (camera.sharpen() > 0) {
        sharpen(light[c]);
      }
    }
    return paint(light);
  }

  private double meanLevel(float[][] light) {
    double sum = 0;
    for (int i = 0; i < width * height; i++) {
      double y = 0.2126 * light[0][i] + 0.7152 * light[1][i] + 0.0722 * light[2][i];
      sum += Math.sqrt(y);
    }
    double root = sum / (width * height);
    return Math.max(1e-9, root * root);
  }

  /** The level that one pixel in {@value #HIGHLIGHT} exceeds, to a fifth of a stop. */
  private double highLevel(float[] plane) {
    int[] count = new int[200];
    for (float level : plane) {
      count[stop(level)]++;
    }
    int left = plane.length / HIGHLIGHT;
    int k = count.length - 1;
    while (k > 0 && left >= count[k]) {
      left -= count[k--];
    }
    return Math.pow(2, (k - 100) / 5.0);
  }

  private static int stop(float level) {
    int k = 100 + (int) Math.floor(5 * Math.log(Math.max(1e-6, level)) / Math.log(2));
    return Math.max(0, Math.min(199, k));
  }

  /** Gaussian, columns then rows; its width may change from left to right. */
  private void blur(float[] plane) {
    if (camera.blurPx() < 0.05) {
      return;
    }
    float[] half = new float[plane.length];
    for (int x = 0; x < width; x++) {
      float[] kernel = kernel(sigmaAt(x));
      for (int y = 0; y < height; y++) {
        half[y * width + x] = fold(plane, kernel, x, y, 0);
      }
    }
    for (int x = 0; x < width; x++) {
      float[] kernel = kernel(sigmaAt(x));
      for (int y = 0; y < height; y++) {
        plane[y * width + x] = fold(half, kernel, x, y, 1);
      }
    }
  }

  private double sigmaAt(int x) {
    return camera.blurPx() * (1 + camera.blurSlope() * (x / (double) width - 0.5));
  }

  private static float[] kernel(double sigma) {
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

  private float fold(float[] plane, float[] kernel, int x, int y, int along) {
    int reach = kernel.length / 2;
    float sum = 0;
    for (int k = -reach; k <= reach; k++) {
      int xx = along == 1 ? Math.max(0, Math.min(width - 1, x + k)) : x;
      int yy = along == 0 ? Math.max(0, Math.min(height - 1, y + k)) : y;
      sum += kernel[k + reach] * plane[yy * width + xx];
    }
    return sum;
  }

  private void develop(float[] plane, double gain, int c) {
    double diagonal = (width * (double) width + height * (double) height) / 4;
    for (int y = 0; y < height; y++) {
      double dy = y - height / 2.0;
      for (int x = 0; x < width; x++) {
        double dx = x - width / 2.0;
        double fall = 1 - camera.vignette() * (dx * dx + dy * dy) / diagonal;
        double level = Math.max(0, plane[y * width + x] * gain * fall);
        double read = 0.25 * camera.noise();
        double sd = Math.sqrt(camera.noise() * camera.noise() * Math.min(1, level) + read * read);
        level = Math.min(1, level) + sd * Grain.normal(seed + c, x, y);
        plane[y * width + x] = (float) tone(Math.max(0, Math.min(1, level)));
      }
    }
  }

  /** The curve of sRGB (IEC 61966-2-1). */
  private static double tone(double level) {
    return level <= 0.0031308 ? 12.92 * level : 1.055 * Math.pow(level, 1 / 2.4) - 0.055;
  }

  private void sharpen(float[] plane) {
    float[] soft = new float[plane.length];
    float[] kernel = kernel(1.1);
    float[] half = new float[plane.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        half[y * width + x] = fold(plane, kernel, x, y, 0);
      }
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        soft[y * width + x] = fold(half, kernel, x, y, 1);
      }
    }
    for (int i = 0; i < plane.length; i++) {
      plane[i] += (float) (camera.sharpen() * (plane[i] - soft[i]));
    }
  }

  private BufferedImage paint(float[][] light) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < width * height; i++) {
      int rgb = level(light[0][i]) << 16 | level(light[1][i]) << 8 | level(light[2][i]);
      picture.setRGB(i % width, i / width, rgb);
    }
    return picture;
  }

  private static int level(float value) {
    return Math.max(0, Math.min(255, Math.round(255 * value)));
  }
}
