package leadlight.report.paint;

import leadlight.vision.Canvas;

/**
 * A blank picture for lines, rectangles and text in the program's own letters, so that its bytes
 * are the same on every machine. Places in pixels, (0, 0) the upper left corner; owns native
 * memory, to be closed.
 */
public final class Sketch implements AutoCloseable {

  private final Canvas canvas;
  private final Pen pen;

  /** A white picture. */
  public Sketch(int widthPx, int heightPx) {
    canvas = new Canvas(widthPx, heightPx, Pen.PAPER);
    pen = new Pen(canvas);
  }

  /** A straight line with smooth edges; none if both ends are one place. */
  public void line(double x0, double y0, double x1, double y1, int colour, double thickness) {
    if (x0 != x1 || y0 != y1) {
      pen.line(colour, thickness, x0, y0, x1, y1);
    }
  }

  /** A filled rectangle. */
  public void box(double x, double y, double width, double height, int colour) {
    pen.fill(colour, x, y, x + width, y, x + width, y + height, x, y + height);
  }

  /**
   * One line of text.
   *
   * @param before share of its width that lies left of x: 0, 0.5 or 1
   */
  public void text(double x, double y, double before, String text, boolean strong) {
    TextStyle style = strong ? TextStyle.STRONG : TextStyle.NOTE;
    pen.text(style, text, x - before * style.width(text), y);
  }

  /** The picture as PNG. */
  public byte[] png() {
    return canvas.png();
  }

  @Override
  public void close() {
    canvas.close();
  }
}
