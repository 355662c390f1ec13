package leadlight.report.paint;

import java.util.List;
import leadlight.vision.Canvas;

/** A picture made of blocks, one below the other. One width, so that letters have one size. */
public final class Sheet {

  private static final int WIDTH_PX = 1600;
  private static final int MARGIN_PX = 36;
  private static final int GAP_PX = 18;

  /** Width of a block. */
  public static final int CONTENT_PX = WIDTH_PX - 2 * MARGIN_PX;

  /** Room right of a strip for its scale bar and for labels of the last pins. */
  public static final int BESIDE_STRIP_PX = 165;

  private Sheet() {}

  public static byte[] png(List<Block> blocks) {
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
