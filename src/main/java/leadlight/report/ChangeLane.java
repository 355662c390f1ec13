package leadlight.report;

import java.util.List;

/** Between a row before and after: a line and a word at each pin that changed. */
final class ChangeLane implements Block {

  private static final int HEIGHT_PX = 46;
  private static final int LINE_PX = 12;
  private static final double THICK_PX = 2.5;

  private final StripGeometry geometry;
  private final List<Integer> strip;
  private final List<String> words;

  ChangeLane(StripGeometry geometry, List<Integer> strip, List<String> words) {
    this.geometry = geometry;
    this.strip = strip;
    this.words = words;
  }

  @Override
  public int heightPx() {
    return HEIGHT_PX;
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    for (int index : strip) {
      if (index < words.size() && !words.get(index).isEmpty()) {
        double at = x + geometry.acrossPx(strip, index);
        pen.line(Pen.INK, THICK_PX, at, y, at, y + LINE_PX);
        pen.textAround(TextStyle.NOTE, words.get(index), at, y + HEIGHT_PX / 2.0 + 5);
        pen.line(Pen.INK, THICK_PX, at, y + HEIGHT_PX - LINE_PX, at, y + HEIGHT_PX);
        arrow(pen, at, y + HEIGHT_PX);
      }
    }
  }

  private static void arrow(Pen pen, double x, double y) {
    pen.fill(Pen.INK, x - 5, y - 6, x + 5, y - 6, x, y + 3);
  }
}
