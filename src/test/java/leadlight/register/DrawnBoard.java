package leadlight.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.vision.Frame;

/**
 * A board as a formula: a row of twelve leads on lands at 0.5 mm, and specks and print that are its
 * own. Photographed by any map, it is exact to a fraction of a pixel. Row frame in millimetres: u
 * along the row from pin 1, v from the heel outward.
 */
public final class DrawnBoard {

  public static final double PITCH_MM = 0.5;
  public static final int LEADS = 12;

  private static final int WIDTH = 620;
  private static final int HEIGHT = 260;
  private static final double EDGE_MM = 0.015;

  private final List<double[]> specks = new ArrayList<>();
  private final double[] bends = new double[LEADS];

  /** A board with specks of its own. */
  public DrawnBoard(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      specks.add(
          new double[] {
            -1 + 7.5 * random.nextDouble(),
            -0.3 + 2.6 * random.nextDouble(),
            0.03 + 0.07 * random.nextDouble(),
            90 * (random.nextDouble() - 0.5)
          });
    }
    for (int i = 0; i < LEADS; i++) {
      bends[i] = 0.06 * (random.nextDouble() - 0.5);
    }
  }

  /** A camera over the row: 60 pixels a millimetre at scale 1. */
  public static Homography camera(double scale, double turnRad, double shiftX, double shiftY) {
    double c = 60 * scale * Math.cos(turnRad);
    double s = 60 * scale * Math.sin(turnRad);
    return new Homography(c, -s, 120 + shiftX, s, c, 60 + shiftY, 0, 0, 1);
  }

  /** The board through a camera, its light changed by a rule, with noise of so many grey levels. */
  public Frame photo(Homography mmToPx, DoubleUnaryOperator lamp, double noise) {
    Homography toMm = mmToPx.inverse();
    Random random = new Random(7);
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        PointPx mm = toMm.map(x, y);
        double light = lamp.applyAsDouble(light(mm.x(), mm.y())) + noise * random.nextGaussian();
        byte value = (byte) Math.max(0, Math.min(255, Math.round(light)));
        for (int k = 0; k < 3; k++) {
          rgb[3 * (y * WIDTH + x) + k] = value;
        }
      }
    }
    return Frame.ofRgb(WIDTH, HEIGHT, rgb);
  }

  private double light(double u, double v) {
    double light = 70;
    for (double[] speck : specks) {
      double r = Math.hypot(u - speck[0], v - speck[1]);
      light += speck[3] * within(r, speck[2]);
    }
    for (int i = 0; i < LEADS; i++) {
      double land = within(Math.abs(u - i * PITCH_MM), 0.15) * within(Math.abs(v - 0.5), 0.6);
      double lead =
          within(Math.abs(u - i * PITCH_MM - bends[i]), 0.09) * within(Math.abs(v - 0.2), 0.6);
      light += (140 - light) * land;
      light += (190 - light) * lead;
    }
    return light;
  }

  private static double within(double distance, double limit) {
    return 1 / (1 + Math.exp((distance - limit) / EDGE_MM));
  }

  /** The row as a finder would give it. */
  public static RowOutcome.Found row(Homography mmToPx) {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < LEADS; i++) {
      double u = i * PITCH_MM;
      leads.add(
          new Lead(
              i + 1,
              mmToPx.map(u, 0.8),
              mmToPx.map(u, 0),
              mmToPx.map(u, 1.1),
              mmToPx.map(u, -0.1),
              1,
              0,
              0));
    }
    double pitchPx = mmToPx.map(0, 0).distanceTo(mmToPx.map(PITCH_MM, 0));
    return new RowOutcome.Found(
        mmToPx, leads, pitchPx, 0, pitchPx / PITCH_MM, BodySide.ABOVE, 1, 0, List.of());
  }
}
