package leadlight.report.paint;

import java.util.ArrayList;
import java.util.List;
import leadlight.vision.Canvas;

/** Writes and draws on a canvas. Places are in pixels, (0, 0) the canvas' upper left corner. */
public final class Pen {

  public static final int INK = 0x1a1a1a;
  public static final int FAINT_INK = 0x595959;
  public static final int RULE = 0xb8b8b8;
  public static final int PAPER = 0xffffff;

  private final Canvas canvas;

  public Pen(Canvas canvas) {
    this.canvas = canvas;
  }

  public Canvas canvas() {
    return canvas;
  }

  /** Writes a line whose base line starts at (x, y). */
  public void text(TextStyle style, String text, double x, double y) {
    slanted(style, text, x, y, 0);
  }

  /** Writes a line that ends at x. */
  public void textEndingAt(TextStyle style, String text, double x, double y) {
    text(style, text, x - style.width(text), y);
  }

  /** Writes a line centred on x. */
  public void textAround(TextStyle style, String text, double x, double y) {
    text(style, text, x - style.width(text) / 2, y);
  }

  /** Writes a line whose base line runs down to the right by an angle. */
  public void slanted(TextStyle style, String text, double x, double y, double angleRad) {
    double cos = Math.cos(angleRad) * style.sizePx();
    double sin = Math.sin(angleRad) * style.sizePx();
    List<double[]> outlines = new ArrayList<>();
    double along = 0;
    for (int codePoint : text.codePoints().toArray()) {
      Glyph glyph = style.typeface().glyph(codePoint);
      for (double[] outline : glyph.outlines()) {
        double[] placed = new double[outline.length];
        for (int i = 0; i < outline.length; i += 2) {
          placed[i] = x + cos * (outline[i] + along) - sin * outline[i + 1];
          placed[i + 1] = y + sin * (outline[i] + along) + cos * outline[i + 1];
        }
        outlines.add(placed);
      }
      along += glyph.advance();
    }
    fill(style.colour(), outlines);
  }

  public void fill(int colour, List<double[]> outlines) {
    if (!outlines.isEmpty()) {
      canvas.fill(outlines, colour);
    }
  }

  public void fill(int colour, double... outline) {
    canvas.fill(List.of(outline), colour);
  }

  public void rect(int colour, int x, int y, int width, int height) {
    canvas.fillRect(x, y, width, height, colour);
  }

  /** A straight line with smoothed edges. */
  public void line(int colour, double thickness, double x0, double y0, double x1, double y1) {
    double length = Math.hypot(x1 - x0, y1 - y0);
    double nx = (y0 - y1) / length * thickness / 2;
    double ny = (x1 - x0) / length * thickness / 2;
    fill(colour, x0 + nx, y0 + ny, x1 + nx, y1 + ny, x1 - nx, y1 - ny, x0 - nx, y0 - ny);
  }

  /** A frame of one pixel just outside a rectangle. */
  public void frame(int colour, int x, int y, int width, int height) {
    rect(colour, x - 1, y - 1, width + 2, 1);
    rect(colour, x - 1, y + height, width + 2, 1);
    rect(colour, x - 1, y, 1, height);
    rect(colour, x + width, y, 1, height);
  }
}
