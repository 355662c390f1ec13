package leadlight.scene.camera;

import java.awt.image.BufferedImage;
import leadlight.scene.chance.Grain;

/** From linear light on the sensor to the picture: exposure, noise, colour, tone. */
public final class Sensor {

  /** The camera dims a picture in which one pixel in so many would be ... */
  private static final int HIGHLIGHT = 25;

  /** ... brighter than this, white being 1. */
  private static final double BRIGHTEST = 1.5;

  private static final double SHARPEN_PX = 1.1;

  private final CameraSpec.Sensing sensor;
  private final Optics optics;
  private final long seed;
  private final int width;
  private final int height;

  public Sensor(CameraSpec camera, long seed) {
    this.sensor = camera.sensor();
    this.optics = new Optics(camera);
    this.seed = seed + 80;
    this.width = camera.widthPx();
    this.height = camera.heightPx();
  }

  /** Takes three planes of linear light, which it changes. */
  public BufferedImage expose(float[][] light) {
    optics.pass(light);
    double gain = Math.min(sensor.exposure() / meanLevel(light), BRIGHTEST / highLevel(light[1]));
    double[] balance = {gain * sensor.redGain(), gain, gain * sensor.blueGain()};
    for (int c = 0; c < 3; c++) {
      record(light[c], balance[c], c);
    }
    if (sensor.mosaic()) {
      new Mosaic(width, height).pass(light);
    }
    develop(light);
    if (sensor.sharpen() > 0) {
      for (float[] plane : light) {
        sharpen(plane);
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

  /** Shot and read noise, and the full well. */
  private void record(float[] plane, double gain, int c) {
    double read = 0.25 * sensor.noise();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double level = Math.min(1, Math.max(0, plane[y * width + x] * gain));
        double sd = Math.sqrt(sensor.noise() * sensor.noise() * level + read * read);
        level += sd * Grain.normal(seed + c, x, y);
        plane[y * width + x] = (float) Math.max(0, Math.min(1, level));
      }
    }
  }

  /** The curve of sRGB (IEC 61966-2-1), then the camera's own contrast and colour. */
  private void develop(float[][] light) {
    double[] v = new double[3];
    for (int i = 0; i < width * height; i++) {
      for (int c = 0; c < 3; c++) {
        double t = tone(light[c][i]);
        v[c] = t + sensor.contrast() * (t * t * (3 - 2 * t) - t);
      }
      double grey = 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2];
      for (int c = 0; c < 3; c++) {
        double t = grey + sensor.saturation() * (v[c] - grey);
        light[c][i] = (float) Math.max(0, Math.min(1, t));
      }
    }
  }

  private static double tone(double level) {
    return level <= 0.0031308 ? 12.92 * level : 1.055 * Math.pow(level, 1 / 2.4) - 0.055;
  }

  private void sharpen(float[] plane) {
    float[] soft = Smoothing.both(plane, Smoothing.kernel(SHARPEN_PX), width, height);
    for (int i = 0; i < plane.length; i++) {
      plane[i] += (float) (sensor.sharpen() * (plane[i] - soft[i]));
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
