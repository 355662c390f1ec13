package leadlight.scene.board;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.chance.Grain;
import leadlight.scene.solids.RowLayout;

/**
 * White print on the mask: the part's outline, a mark at pin 1, marks beside and ahead of the row.
 */
final class Legend {

  private static final double HALF_MM = 0.065;
  private static final double FAR_MM = 0.08;
  private static final int WORDS = 3;

  private final List<double[]> strokes = new ArrayList<>();
  private final RowLayout row;
  private final long seed;
  private final double end;
  private double[] box = {1e9, 1e9, -1e9, -1e9};

  Legend(RowLayout row) {
    this.row = row;
    this.seed = row.spec.seed();
    this.end = row.part.landsAtMm()[row.leads() - 1];
    if (row.spec.board().print()) {
      outline();
      pinMark();
      words();
    }
    for (double[] s : strokes) {
      for (int k = 0; k < 4; k++) {
        box[k % 2] = Math.min(box[k % 2], s[k] - FAR_MM);
        box[2 + k % 2] = Math.max(box[2 + k % 2], s[k] + FAR_MM);
      }
    }
  }

  /** Brackets at both ends; now and then a line along the whole row, close to the lands. */
  private void outline() {
    double left = -0.75 - 0.5 * Grain.hash(seed, 13, 1);
    double right = end + 0.75 + 0.5 * Grain.hash(seed, 13, 2);
    double low = -0.2 + 0.6 * Grain.hash(seed, 13, 3);
    line(left, low - 3, left, low);
    line(right, low - 3, right, low);
    if (Grain.hash(seed, 13, 7) < 0.3) {
      double ahead = row.part.landAheadMm() + 0.18 + 0.25 * Grain.hash(seed, 13, 8);
      line(left, ahead, right, ahead);
      line(left, low, left, ahead);
      line(right, low, right, ahead);
    } else {
      line(left, low, left + 0.3, low);
      line(right, low, right - 0.3, low);
    }
  }

  private void pinMark() {
    double u = row.part.pin1Right() ? end : 0;
    double v = row.part.landAheadMm() + 0.28 + 0.2 * Grain.hash(seed, 13, 9);
    if (Grain.hash(seed, 13, 10) < 0.4) {
      line(u, v, u, v + 0.02);
    } else if (Grain.hash(seed, 13, 10) < 0.7) {
      line(u, v, u - 0.15, v + 0.25);
      line(u, v, u + 0.15, v + 0.25);
      line(u - 0.15, v + 0.25, u + 0.15, v + 0.25);
    }
  }

  private void words() {
    for (int word = 0; word < WORDS; word++) {
      double size = 0.4 + 0.5 * Grain.hash(seed, 15, word);
      double v = row.part.landAheadMm() + 0.65 + 1.6 * Grain.hash(seed, 16, word);
      double u = end * ((word + 0.9 * Grain.hash(seed, 17, word)) * 1.2 / WORDS - 0.1);
      int letters = (int) (5 * Grain.hash(seed, 18, word) * Math.min(1, end / 8));
      for (int k = 0; k < letters; k++) {
        int glyph = (int) (StrokeFont.glyphs() * Grain.hash(seed, 19 + word, k));
        StrokeFont.draw(glyph, u + 0.78 * k * size, v, size, this::line);
      }
    }
  }

  private void line(double u0, double v0, double u1, double v1) {
    strokes.add(new double[] {u0, v0, u1, v1});
  }

  /** True where ink lies; its edge is ragged. */
  boolean covers(double u, double v) {
    if (u < box[0] || v < box[1] || u > box[2] || v > box[3]) {
      return false;
    }
    for (double[] s : strokes) {
      boolean near =
          u > Math.min(s[0], s[2]) - FAR_MM
              && u < Math.max(s[0], s[2]) + FAR_MM
              && v > Math.min(s[1], s[3]) - FAR_MM
              && v < Math.max(s[1], s[3]) + FAR_MM;
      if (near && inked(s, u, v)) {
        return true;
      }
    }
    return false;
  }

  private boolean inked(double[] s, double u, double v) {
    double du = s[2] - s[0];
    double dv = s[3] - s[1];
    double t = ((u - s[0]) * du + (v - s[1]) * dv) / (du * du + dv * dv);
    t = Math.max(0, Math.min(1, t));
    double x = u - s[0] - t * du;
    double y = v - s[1] - t * dv;
    double ragged = HALF_MM + 0.006 * Grain.cloud(seed + 8, 16 * u, 16 * v);
    return x * x + y * y < ragged * ragged;
  }

  /** Letters and figures of straight strokes, as plotters and board print draw them. */
  private static final class StrokeFont {

    /**
     * Corner points by figure, x then y on a grid 2 wide and 4 high, y down; runs split by blanks.
     */
    private static final String[] GLYPHS = {
      "00 20 24 04 00",
      "01 10 14",
      "01 00 20 21 04 24",
      "00 20 12 22 24 04",
      "14 10 03 23",
      "20 00 02 22 24 04",
      "20 00 04 24 22 02",
      "00 20 04",
      "00 20 24 04 00|02 22",
      "22 02 00 20 24 04",
      "04 01 10 21 24|02 22",
      "20 00 04 24",
      "04 00 10 21 23 14 04",
      "20 00 04 24|02 12",
      "04 00 20 22 02|12 24",
      "00 04 24",
      "20 23 14 03 01",
      "00 04|20 24|02 22",
      "04 00 20 22 02",
      "00 20|10 14",
      "00 03 14 23 20",
      "00 04|20 02 24",
      "04 00 24 20"
    };

    private StrokeFont() {}

    static int glyphs() {
      return GLYPHS.length;
    }

    /** Hears of every stroke of one figure. */
    static void draw(int glyph, double u, double v, double height, Pen pen) {
      double step = height / 4;
      for (String run : GLYPHS[glyph].split("\\|")) {
        String[] points = run.split(" ");
        for (int k = 1; k < points.length; k++) {
          String a = points[k - 1];
          String b = points[k];
          pen.line(
              u + (a.charAt(0) - '0') * step,
              v + (a.charAt(1) - '0') * step,
              u + (b.charAt(0) - '0') * step,
              v + (b.charAt(1) - '0') * step);
        }
      }
    }

    /** Takes strokes. */
    interface Pen {
      void line(double u0, double v0, double u1, double v1);
    }
  }
}
