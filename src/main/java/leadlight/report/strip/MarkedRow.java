package leadlight.report.strip;

import java.util.List;
import leadlight.model.joint.GradedJoint;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextStyle;
import leadlight.report.paint.VerdictMark;
import leadlight.vision.Canvas;

/**
 * A row turned straight with pin numbers and verdict marks below it, without a word: for pages in
 * any language.
 */
public final class MarkedRow {

  private static final int TICK_PX = 9;
  private static final int NUMBER_PX = 24;
  private static final int MARK_PX = 24;
  private static final int LANE_PX = 34;
  private static final int QUALITY = 88;
  private static final int OUTSIDE = 0xe4e4e4;

  private MarkedRow() {}

  /**
   * The picture as JPEG; its width is at most {@code widthPx}. Bytes depend on the arguments alone.
   *
   * @param row the row with the joints that count
   */
  public static Picture jpeg(ShownRow row, int widthPx) {
    StripGeometry geometry = new StripGeometry(row.found(), row.spec(), row.joints(), widthPx);
    List<List<Integer>> strips = geometry.strips();
    int width = strips.stream().mapToInt(geometry::widthPx).max().orElseThrow();
    int each = geometry.heightPx() + TICK_PX + NUMBER_PX + LANE_PX;
    int height = each * strips.size();
    try (Canvas canvas = new Canvas(width, height, Pen.PAPER)) {
      Pen pen = new Pen(canvas);
      for (int i = 0; i < strips.size(); i++) {
        paint(pen, row, geometry, strips.get(i), i * each);
      }
      return new Picture(canvas.jpeg(QUALITY), width, height);
    }
  }

  /** A picture with its size. */
  public record Picture(byte[] jpeg, int widthPx, int heightPx) {}

  private static void paint(
      Pen pen, ShownRow row, StripGeometry geometry, List<Integer> strip, int top) {
    int width = geometry.widthPx(strip);
    int height = geometry.heightPx();
    pen.rect(OUTSIDE, 0, top, width, height);
    pen.canvas().pasteStraightened(row.picture(), geometry.toPhoto(strip), 0, top, width, height);
    int below = top + height;
    for (int index : strip) {
      GradedJoint joint = row.joints().get(index);
      double x = geometry.acrossPx(strip, index);
      pen.rect(Pen.INK, (int) Math.round(x) - 1, below + 1, 2, TICK_PX - 2);
      pen.textAround(TextStyle.STRONG, "" + joint.pin(), x, below + TICK_PX + NUMBER_PX - 6);
      VerdictMark.draw(
          pen, joint.verdict(), x, below + TICK_PX + NUMBER_PX + LANE_PX / 2.0 - 2, MARK_PX);
    }
  }
}
