package leadlight.report.paint;

import java.util.List;
import leadlight.model.Verdict;

/**
 * The sign of each verdict: a shape of its own, filled with a lightness of its own, so that it
 * reads in grey print and with any colour vision. Colours are of the palette of Okabe and Ito,
 * "Color Universal Design" (2008): bluish green, yellow, sky blue, vermillion.
 */
public final class VerdictMark {

  private static final int BLUISH_GREEN = 0x009e73;
  private static final int YELLOW = 0xf0e442;
  private static final int SKY_BLUE = 0x56b4e9;
  private static final int VERMILLION = 0xd55e00;
  private static final int CIRCLE_CORNERS = 40;

  private VerdictMark() {}

  /** The colour inside the mark. */
  public static int filling(Verdict verdict) {
    return switch (verdict) {
      case ACCEPTABLE -> Pen.PAPER;
      case PROCESS_INDICATOR -> YELLOW;
      case UNJUDGED -> SKY_BLUE;
      case DEFECT -> VERMILLION;
    };
  }

  /** Draws the mark around a place; it stays within half a size to each side. */
  public static void draw(Pen pen, Verdict verdict, double x, double y, double size) {
    double r = size / 2;
    int filling = filling(verdict);
    switch (verdict) {
      case ACCEPTABLE -> {
        pen.fill(filling, circle(x, y, r * 0.66));
        pen.fill(BLUISH_GREEN, List.of(circle(x, y, r * 0.74), circle(x, y, r * 0.46)));
      }
      case PROCESS_INDICATOR -> outlined(pen, filling, x, y, r, triangle());
      case UNJUDGED -> {
        outlined(pen, filling, x, y, r, square());
        TextStyle style = new TextStyle(Typeface.BOLD, size * 0.8, Pen.INK);
        pen.textAround(style, "?", x, y + size * 0.29);
      }
      case DEFECT -> {
        outlined(pen, filling, x, y, r, diamond());
        pen.line(Pen.PAPER, size * 0.13, x - r * 0.33, y - r * 0.33, x + r * 0.33, y + r * 0.33);
        pen.line(Pen.PAPER, size * 0.13, x - r * 0.33, y + r * 0.33, x + r * 0.33, y - r * 0.33);
      }
    }
  }

  private static void outlined(
      Pen pen, int filling, double x, double y, double r, double[] corners) {
    pen.fill(Pen.INK, placed(corners, x, y, r));
    pen.fill(filling, placed(corners, x, y, r * 0.76));
  }

  private static double[] placed(double[] corners, double x, double y, double scale) {
    double[] placed = new double[corners.length];
    for (int i = 0; i < corners.length; i += 2) {
      placed[i] = x + scale * corners[i];
      placed[i + 1] = y + scale * corners[i + 1];
    }
    return placed;
  }

  /** Its centre of gravity is the origin, so that it scales around it evenly. */
  private static double[] triangle() {
    return new double[] {0, -1.12, 1, 0.56, -1, 0.56};
  }

  private static double[] square() {
    return new double[] {-0.84, -0.84, 0.84, -0.84, 0.84, 0.84, -0.84, 0.84};
  }

  private static double[] diamond() {
    return new double[] {0, -1.1, 1.1, 0, 0, 1.1, -1.1, 0};
  }

  private static double[] circle(double x, double y, double r) {
    double[] outline = new double[2 * CIRCLE_CORNERS];
    for (int i = 0; i < CIRCLE_CORNERS; i++) {
      outline[2 * i] = x + r * Math.cos(2 * Math.PI * i / CIRCLE_CORNERS);
      outline[2 * i + 1] = y + r * Math.sin(2 * Math.PI * i / CIRCLE_CORNERS);
    }
    return outline;
  }
}
