package leadlight.app.output;

import leadlight.quality.Plot;
import leadlight.quality.Surface;
import leadlight.report.paint.Sketch;

/** A plot as PNG. */
final class PlotPicture {

  private PlotPicture() {}

  static byte[] png(Plot plot) {
    try (Sketch sketch = new Sketch(Plot.WIDTH, Plot.HEIGHT)) {
      plot.draw(
          new Surface() {
            @Override
            public void line(double x0, double y0, double x1, double y1, int colour, double width) {
              sketch.line(x0, y0, x1, y1, colour, width);
            }

            @Override
            public void box(double x, double y, double width, double height, int colour) {
              sketch.box(x, y, width, height, colour);
            }

            @Override
            public void text(double x, double y, Anchor anchor, String text, boolean strong) {
              sketch.text(x, y, before(anchor), text, strong);
            }
          });
      return sketch.png();
    }
  }

  /** Share of a text that lies before its place. */
  private static double before(Surface.Anchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 0.5;
      case END -> 1;
    };
  }
}
