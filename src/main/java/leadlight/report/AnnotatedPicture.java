package leadlight.report;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/**
 * The annotated picture: header, the straightened row with its marks around it, the findings, and
 * the untouched photo. One width for every photo, so that letters have one size.
 */
final class AnnotatedPicture {

  private static final int WIDTH_PX = 1600;
  private static final int MARGIN_PX = 36;
  private static final int GAP_PX = 18;
  private static final int CONTENT_PX = WIDTH_PX - 2 * MARGIN_PX;

  /** Room right of a strip for its scale bar and for labels of the last pins. */
  private static final int BESIDE_STRIP_PX = 165;

  private AnnotatedPicture() {}

  static byte[] png(ScoredPhoto scored, Frame photo, ReportContext context) {
    double factor = Math.min(1, CONTENT_PX / (double) photo.widthPx());
    try (Frame small = photo.shrunk(factor)) {
      List<Block> blocks = new ArrayList<>();
      blocks.add(new Header(scored, context, CONTENT_PX));
      List<PointPx> corners = new ArrayList<>();
      if (scored.row() instanceof RowOutcome.Found found) {
        StripGeometry geometry =
            new StripGeometry(
                found, scored.settings().row(), scored.joints(), CONTENT_PX - BESIDE_STRIP_PX);
        for (List<Integer> strip : geometry.strips()) {
          blocks.add(new RowStrip(geometry, strip, scored.joints(), photo));
        }
        blocks.add(new FindingTable(Entry.of(scored.joints()), CONTENT_PX));
        for (PointPx corner : geometry.corners()) {
          corners.add(new PointPx(factor * corner.x(), factor * corner.y()));
        }
      }
      blocks.add(new PhotoPanel(scored, context, small, corners, CONTENT_PX));
      return painted(blocks);
    }
  }

  private static byte[] painted(List<Block> blocks) {
    int height = 2 * MARGIN_PX - GAP_PX;
    for (Block block : blocks) {
      height += block.heightPx() + GAP_PX;
    }
    try (Canvas canvas = new Canvas(WIDTH_PX, height, Pen.PAPER)) {
      Pen pen = new Pen(canvas);
      int y = MARGIN_PX;
      for (Block block : blocks) {
        block.paint(pen, MARGIN_PX, y);
        y += block.heightPx() + GAP_PX;
      }
      return canvas.png();
    }
  }
}
