package leadlight.report.picture;

import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.result.GradedLeg;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextStyle;
import leadlight.report.paint.Typeface;
import leadlight.report.paint.VerdictMark;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/** The photo with each anchor leg outlined, numbered and marked with its verdict. */
public final class LegsPicture {

  private static final int WIDTH_PX = 1280;
  private static final double MARK_PX = 34;
  private static final double LINE_PX = 2.5;

  private LegsPicture() {}

  /** The picture, PNG. */
  public static byte[] png(Frame photo, List<GradedLeg> legs) {
    double factor = Math.min(2.5, WIDTH_PX / (double) photo.widthPx());
    int width = (int) Math.round(photo.widthPx() * factor);
    int height = (int) Math.round(photo.heightPx() * factor);
    try (Canvas canvas = new Canvas(width, height, Pen.PAPER)) {
      canvas.paste(photo, 0, 0, width, height);
      marks(new Pen(canvas), legs, factor, 0, 0, width);
      return canvas.png();
    }
  }

  /** The same as JPEG, no wider than some pixels: for a page. */
  public static byte[] jpeg(Frame photo, List<GradedLeg> legs, int mostPx, int quality) {
    double factor = Math.min(1.5, mostPx / (double) photo.widthPx());
    int width = (int) Math.round(photo.widthPx() * factor);
    int height = (int) Math.round(photo.heightPx() * factor);
    try (Canvas canvas = new Canvas(width, height, Pen.PAPER)) {
      canvas.paste(photo, 0, 0, width, height);
      marks(new Pen(canvas), legs, factor, 0, 0, width);
      return canvas.jpeg(quality);
    }
  }

  /**
   * Draws the marks of legs over their photo.
   *
   * @param factor scale at which the photo was pasted
   * @param x0 where
   * @param y0 where
   * @param width of the pasted photo
   */
  static void marks(
      Pen pen, List<GradedLeg> legs, double factor, double x0, double y0, double width) {
    for (GradedLeg leg : legs) {
      outline(pen, leg, factor, x0, y0);
      mark(pen, leg, factor, x0, y0, width);
    }
  }

  private static void outline(Pen pen, GradedLeg leg, double factor, double x0, double y0) {
    List<PointPx> points = leg.outline();
    for (int i = 0; i < points.size(); i++) {
      PointPx from = points.get(i);
      PointPx to = points.get((i + 1) % points.size());
      for (double wide : new double[] {2 * LINE_PX, LINE_PX}) {
        pen.line(
            wide > LINE_PX ? Pen.INK : VerdictMark.filling(leg.verdict()),
            wide,
            x0 + (from.x() + 0.5) * factor,
            y0 + (from.y() + 0.5) * factor,
            x0 + (to.x() + 0.5) * factor,
            y0 + (to.y() + 0.5) * factor);
      }
    }
  }

  private static void mark(
      Pen pen, GradedLeg leg, double factor, double x0, double y0, double width) {
    double right =
        leg.outline().stream().mapToDouble(PointPx::x).max().orElseThrow() * factor + MARK_PX * 0.7;
    double left =
        leg.outline().stream().mapToDouble(PointPx::x).min().orElseThrow() * factor - MARK_PX * 0.7;
    double x = x0 + (right + MARK_PX < width ? right : left);
    double y = y0 + (leg.centre().y() + 0.5) * factor;
    VerdictMark.draw(pen, leg.verdict(), x, y, MARK_PX);
    if (leg.number().isPresent()) {
      TextStyle style = new TextStyle(Typeface.BOLD, 24, Pen.INK);
      String number = "" + leg.number().getAsInt();
      double half = style.width(number) / 2 + 5;
      double top = y + MARK_PX * 0.6;
      pen.fill(
          Pen.PAPER,
          List.of(
              new double[] {x - half, top, x + half, top, x + half, top + 30, x - half, top + 30}));
      pen.textAround(style, number, x, top + 24);
    }
  }
}
