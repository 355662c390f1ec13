package leadlight.row;

import java.util.Random;
import java.util.Set;
import leadlight.model.PointPx;
import leadlight.vision.Frame;

/**
 * A row drawn plainly: green mask, gold lands with grey leads on them, a bright fillet band ahead
 * of each toe, a dark body above (for angle 0). Four samples a pixel, slight noise with a fixed
 * seed.
 */
public final class DrawnRow {

  private final int leads;
  private final double pitch;
  private final double angle;
  private final double midX;
  private final double midY;
  private final Set<Integer> missing;

  public DrawnRow(int leads, double pitchPx, double angleRad) {
    this(leads, pitchPx, angleRad, Double.NaN, Double.NaN, Set.of());
  }

  private DrawnRow(
      int leads, double pitch, double angle, double midX, double midY, Set<Integer> missing) {
    this.leads = leads;
    this.pitch = pitch;
    this.angle = angle;
    this.midX = midX;
    this.midY = midY;
    this.missing = missing;
  }

  DrawnRow without(Integer... pins) {
    return new DrawnRow(leads, pitch, angle, midX, midY, Set.of(pins));
  }

  DrawnRow at(double x, double y) {
    return new DrawnRow(leads, pitch, angle, x, y, missing);
  }

  /** Toe of a pin; valid after the place is known. */
  public PointPx toe(int pin) {
    return toPhoto((pin - 1 - (leads - 1) / 2.0) * pitch, TOE * pitch);
  }

  private static final double TOE = 0.5;
  private double drawnX;
  private double drawnY;

  public Frame draw(int width, int height) {
    return drawWith(null, width, height);
  }

  Frame drawWith(DrawnRow other, int width, int height) {
    place(width, height);
    if (other != null) {
      other.place(width, height);
    }
    Random random = new Random(7);
    byte[] rgb = new byte[width * height * 3];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double[] sum = new double[3];
        for (int s = 0; s < 4; s++) {
          double sx = x - 0.25 + 0.5 * (s % 2);
          double sy = y - 0.25 + 0.5 * (s / 2);
          int[] colour = colour(sx, sy);
          if (other != null && colour == MASK) {
            colour = other.colour(sx, sy);
          }
          for (int c = 0; c < 3; c++) {
            sum[c] += colour[c] / 4.0;
          }
        }
        double noise = random.nextGaussian() * 2;
        for (int c = 0; c < 3; c++) {
          rgb[(y * width + x) * 3 + c] = (byte) Math.max(0, Math.min(255, sum[c] + noise));
        }
      }
    }
    return Frame.ofRgb(width, height, rgb);
  }

  private static final int[] MASK = {30, 90, 50};
  private static final int[] LAND = {150, 140, 110};
  private static final int[] LEAD = {175, 175, 170};
  private static final int[] WALL = {60, 60, 60};
  private static final int[] BAND = {240, 240, 240};
  private static final int[] BODY = {45, 45, 48};

  private void place(int width, int height) {
    drawnX = Double.isNaN(midX) ? width / 2.0 : midX;
    drawnY = Double.isNaN(midY) ? height / 2.0 : midY;
  }

  private PointPx toPhoto(double x, double y) {
    return new PointPx(
        drawnX + x * Math.cos(angle) - y * Math.sin(angle),
        drawnY + x * Math.sin(angle) + y * Math.cos(angle));
  }

  private int[] colour(double px, double py) {
    double dx = px - drawnX;
    double dy = py - drawnY;
    double x = (dx * Math.cos(angle) + dy * Math.sin(angle)) / pitch;
    double v = (-dx * Math.sin(angle) + dy * Math.cos(angle)) / pitch;
    double u = x + (leads - 1) / 2.0;
    if (v < -1.7 && v > -4.5 && Math.abs(x) < leads / 2.0 + 0.8) {
      return BODY;
    }
    int k = (int) Math.round(u);
    if (k < 0 || k >= leads) {
      return MASK;
    }
    double across = Math.abs(u - k);
    boolean lead = !missing.contains(k + 1);
    if (lead && across < 0.21 && v > -1.7 && v < TOE) {
      return LEAD;
    }
    if (across < 0.3 && v > -1.3 && v < TOE + 0.7) {
      if (lead && v > TOE && across < 0.21) {
        return v < TOE + 0.12 ? WALL : v < TOE + 0.3 ? BAND : LAND;
      }
      return LAND;
    }
    return MASK;
  }
}
