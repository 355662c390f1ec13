package leadlight.scene.board;

/** Letters and figures of straight strokes, as plotters and board print draw them. */
final class StrokeFont {

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
