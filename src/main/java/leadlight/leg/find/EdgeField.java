package leadlight.leg.find;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.Frame;

/**
 * How strongly edges run in a shrunk picture, and which way: slopes of each channel, squeezed so
 * that a faint edge counts almost as much as a hard one.
 */
final class EdgeField {

  private static final int CHANNELS = 3;
  private static final int DIRECTIONS = 72;
  private static final int QUARTERS = 4;

  private final double factor;
  private final double halfShown;
  private final int width;
  private final int height;
  private final float[][] slopeX = new float[CHANNELS][];
  private final float[][] slopeY = new float[CHANNELS][];

  /**
   * Takes the picture at a part of its size.
   *
   * @param factor the part, above 0 and at most 1
   * @param faint slope, grey levels a pixel, that counts half
   * @param halfShown weight of the better half of an outline, where a part may hide the other; else
   *     0
   */
  EdgeField(Frame frame, double factor, double faint, double halfShown) {
    this.factor = factor;
    this.halfShown = halfShown;
    try (Frame small =
        factor < 1
            ? frame.shrunk(factor)
            : frame.cropped(0, 0, frame.widthPx(), frame.heightPx())) {
      this.width = small.widthPx();
      this.height = small.heightPx();
      ColourPatch patch =
          small.straightened(new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1), width, height);
      channel(0, patch.red(), faint);
      channel(1, patch.green(), faint);
      channel(2, patch.blue(), faint);
    }
  }

  private void channel(int channel, Plane plane, double faint) {
    float[] x = new float[width * height];
    float[] y = new float[width * height];
    for (int row = 1; row < height - 1; row++) {
      for (int column = 1; column < width - 1; column++) {
        double right = sum(plane, column + 1, row, false) - sum(plane, column - 1, row, false);
        double down = sum(plane, column, row + 1, true) - sum(plane, column, row - 1, true);
        double slope = Math.hypot(right, down) / 8;
        double weight = 1 / (8 * (slope + faint));
        x[row * width + column] = (float) (right * weight);
        y[row * width + column] = (float) (down * weight);
      }
    }
    slopeX[channel] = x;
    slopeY[channel] = y;
  }

  /** Three neighbours in a line, weighed 1, 2, 1 (Sobel's smoothing). */
  private static double sum(Plane plane, int x, int y, boolean alongX) {
    int dx = alongX ? 1 : 0;
    int dy = 1 - dx;
    return plane.at(x - dx, y - dy) + 2 * plane.at(x, y) + plane.at(x + dx, y + dy);
  }

  double factor() {
    return factor;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /**
   * How much of an outline is an edge, 0 to 1: the slope across it, with its sign, averaged along
   * it, so that a land all round brighter or all round darker than the board counts, and edges that
   * merely cross it do not.
   *
   * @param place in this field's own pixels
   */
  double outline(Obround shape, LandPlace place) {
    return new Stencil(shape, place, 1).score(place.centre().x(), place.centre().y());
  }

  /** An outline of one shape, turn and scale, to be laid at many places. */
  final class Stencil {

    private final double[] atX;
    private final double[] atY;
    private final double[] normalX;
    private final double[] normalY;

    /**
     * Takes the outline.
     *
     * @param place its turn and scale
     * @param every use each n-th direction only
     */
    Stencil(Obround shape, LandPlace place, int every) {
      int count = DIRECTIONS / every;
      atX = new double[count];
      atY = new double[count];
      normalX = new double[count];
      normalY = new double[count];
      double cos = Math.cos(place.angleRad());
      double sin = Math.sin(place.angleRad());
      for (int i = 0; i < count; i++) {
        double dx = Math.cos(2 * Math.PI * i / count);
        double dy = Math.sin(2 * Math.PI * i / count);
        double reach = shape.reachMm(dx, dy);
        PointPx at = place.at(dx * reach, dy * reach);
        atX[i] = at.x() - place.centre().x();
        atY[i] = at.y() - place.centre().y();
        double[] normal = shape.normal(dx, dy);
        normalX[i] = cos * normal[0] - sin * normal[1];
        normalY[i] = sin * normal[0] + cos * normal[1];
      }
    }

    /** The share of it that is an edge at a place; what lies outside the picture is none. */
    double score(double x, double y) {
      double[] quarters = quarters(x, y);
      double whole = 0;
      double half = 0;
      for (int channel = 0; channel < CHANNELS; channel++) {
        whole += Math.abs(sum(quarters, channel, 0, QUARTERS));
      }
      for (int first = 0; halfShown > 0 && first < QUARTERS; first++) {
        double here = 0;
        for (int channel = 0; channel < CHANNELS; channel++) {
          here += Math.abs(sum(quarters, channel, first, QUARTERS / 2));
        }
        half = Math.max(half, here);
      }
      return Math.max(whole, 2 * halfShown * half) / (CHANNELS * atX.length);
    }

    private static double sum(double[] quarters, int channel, int first, int count) {
      double sum = 0;
      for (int i = 0; i < count; i++) {
        sum += quarters[(first + i) % QUARTERS * CHANNELS + channel];
      }
      return sum;
    }

    private double[] quarters(double x, double y) {
      double[] sums = new double[QUARTERS * CHANNELS];
      for (int i = 0; i < atX.length; i++) {
        int column = (int) (x + atX[i] + 0.5);
        int row = (int) (y + atY[i] + 0.5);
        if (column >= 1 && row >= 1 && column < width - 1 && row < height - 1) {
          int index = row * width + column;
          int quarter = i * QUARTERS / atX.length * CHANNELS;
          for (int channel = 0; channel < CHANNELS; channel++) {
            sums[quarter + channel] +=
                normalX[i] * slopeX[channel][index] + normalY[i] * slopeY[channel][index];
          }
        }
      }
      return sums;
    }
  }
}
