package leadlight.scene.camera;

/**
 * A sensor that sees one colour a pixel (Bayer pattern RGGB) and whose camera interpolates the
 * others linearly from the nearest pixels that saw them. Green grows softer by half a pixel
 * (deviation; mean of pixels that saw it and those that did not).
 */
public final class Mosaic {

  /** What the interpolation adds to the blur of green. */
  public static final double BLUR_PX = 0.5;

  private final int width;
  private final int height;

  Mosaic(int width, int height) {
    this.width = width;
    this.height = height;
  }

  /** Replaces what each pixel could not have seen. */
  void pass(float[][] light) {
    float[][] seen = {light[0].clone(), light[1].clone(), light[2].clone()};
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int k = y * width + x;
        for (int c = 0; c < 3; c++) {
          if (c != colour(x, y)) {
            light[c][k] = mean(seen[c], c, x, y);
          }
        }
      }
    }
  }

  private static int colour(int x, int y) {
    return (x & 1) + (y & 1);
  }

  /** Mean of the nearest ring of pixels that saw the colour: sides if any did, else corners. */
  private float mean(float[] plane, int c, int x, int y) {
    float sum = 0;
    int count = 0;
    for (int ring = 1; ring <= 2 && count == 0; ring++) {
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          int xx = x + dx;
          int yy = y + dy;
          boolean there = dx * dx + dy * dy == ring && inside(xx, yy);
          if (there && colour(xx, yy) == c) {
            sum += plane[yy * width + xx];
            count++;
          }
        }
      }
    }
    return count > 0 ? sum / count : plane[y * width + x];
  }

  private boolean inside(int x, int y) {
    return x >= 0 && y >= 0 && x < width && y < height;
  }
}
