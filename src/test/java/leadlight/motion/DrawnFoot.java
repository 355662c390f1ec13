package leadlight.motion;

import java.util.Random;
import leadlight.model.Homography;
import leadlight.model.picture.Plane;
import leadlight.register.Cut;
import leadlight.register.Overlay;
import leadlight.register.RowGrid;

/** One foot on its land, 48 pixels a pitch, drawn exactly wherever it was pushed. */
final class DrawnFoot {

  static final double PITCH_PX = 48;
  static final int WIDTH = 160;
  static final int HEIGHT = 140;
  static final Foot FOOT = new Foot(1, 80, 90, 80, 30, 110, 9.6);

  private DrawnFoot() {}

  /** The foot at rest, and with its toe pushed so many pixels; it bends above its heel. */
  static Overlay pushed(double toePx, double noise, double lamp) {
    RowGrid grid = new RowGrid(0, 0, PITCH_PX / 0.5, WIDTH, HEIGHT);
    return new Overlay(
        cut(grid, 0, noise, 1, 1),
        cut(grid, toePx, noise, lamp, 2),
        new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1),
        1,
        1,
        1);
  }

  private static Cut cut(RowGrid grid, double toePx, double noise, double lamp, long seed) {
    Random random = new Random(seed);
    float[] light = new float[WIDTH * HEIGHT];
    boolean[] seen = new boolean[light.length];
    for (int i = 0; i < light.length; i++) {
      light[i] = (float) (lamp * at(i % WIDTH, i / WIDTH, toePx) + noise * random.nextGaussian());
      seen[i] = true;
    }
    return new Cut(grid, new Plane(WIDTH, HEIGHT, light), seen);
  }

  private static double at(double x, double y, double toePx) {
    double shift = toePx * Math.max(0, y - FOOT.heelY() + 60) / (FOOT.length() + 60);
    double land = within(Math.abs(x - 80), 15) * within(Math.abs(y - 65), 45);
    double lead = within(Math.abs(x - 80 - shift), 9.6) * within(y, 90);
    double board = 60 + 8 * Math.sin(x / 7) * Math.cos(y / 9);
    double metal = 150 + 15 * Math.sin(y / 5);
    double top = 205 + 12 * Math.sin((x - shift) / 3) * Math.cos(y / 6);
    double ground = board + (metal - board) * land;
    return ground + (top - ground) * lead;
  }

  private static double within(double distance, double limit) {
    return 1 / (1 + Math.exp((distance - limit) / 0.7));
  }
}
