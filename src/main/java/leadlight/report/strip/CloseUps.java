package leadlight.report.strip;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextStyle;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;

/**
 * Contact sheets of joints: straightened close-ups with words below. A close-up travels as PNG
 * bytes, so that many of them need no native memory. The bytes depend on the arguments alone.
 */
public final class CloseUps {

  /** Side of the square picture in a close-up. */
  public static final int PICTURE_PX = 300;

  private static final int EDGE_PX = 10;
  private static final int TICK_PX = 7;
  private static final int LINES = 5;
  private static final int COLUMNS = 5;
  private static final int TITLE_PX = 50;
  private static final int TILE_WIDTH_PX = PICTURE_PX + 2 * EDGE_PX;
  private static final int TILE_HEIGHT_PX =
      PICTURE_PX + 2 * EDGE_PX + LINES * TextStyle.NOTE.lineHeightPx() + EDGE_PX;

  private CloseUps() {}

  /**
   * One close-up.
   *
   * @param photo the upright photo
   * @param tileToPhoto from pixels of the square to pixels of the photo
   * @param toe a place of the photo at which ticks beside the picture point
   * @param words said below; cut if they need more than five lines
   */
  public static byte[] tile(Frame photo, Homography tileToPhoto, PointPx toe, List<String> words) {
    try (Canvas canvas = new Canvas(TILE_WIDTH_PX, TILE_HEIGHT_PX, Pen.PAPER)) {
      Pen pen = new Pen(canvas);
      canvas.pasteStraightened(photo, tileToPhoto, EDGE_PX, EDGE_PX, PICTURE_PX, PICTURE_PX);
      PointPx at = tileToPhoto.inverse().map(toe.x(), toe.y());
      int x = EDGE_PX + (int) Math.round(at.x());
      int y = EDGE_PX + (int) Math.round(at.y());
      pen.rect(Pen.INK, x, EDGE_PX + PICTURE_PX, 1, TICK_PX);
      pen.rect(Pen.INK, EDGE_PX - TICK_PX, y, TICK_PX, 1);
      int line = EDGE_PX + PICTURE_PX + EDGE_PX;
      for (String text : wrapped(words)) {
        line += TextStyle.NOTE.lineHeightPx();
        pen.text(TextStyle.NOTE, text, EDGE_PX, line);
      }
      return canvas.png();
    }
  }

  private static List<String> wrapped(List<String> words) {
    List<String> lines = new ArrayList<>();
    words.forEach(text -> lines.addAll(TextStyle.NOTE.wrapped(text, PICTURE_PX)));
    return lines.subList(0, Math.min(LINES, lines.size()));
  }

  /** The close-ups on one sheet, row by row, as PNG. */
  public static byte[] sheet(String title, List<byte[]> tiles) {
    int columns = Math.max(1, Math.min(COLUMNS, tiles.size()));
    int rows = (tiles.size() + columns - 1) / columns;
    int width = Math.max(2, columns) * TILE_WIDTH_PX;
    try (Canvas canvas = new Canvas(width, TITLE_PX + rows * TILE_HEIGHT_PX, Pen.PAPER)) {
      new Pen(canvas).text(TextStyle.STRONG, title, EDGE_PX, TITLE_PX - 2 * EDGE_PX);
      for (int i = 0; i < tiles.size(); i++) {
        paste(
            canvas,
            tiles.get(i),
            i % columns * TILE_WIDTH_PX,
            TITLE_PX + i / columns * TILE_HEIGHT_PX);
      }
      return canvas.png();
    }
  }

  private static void paste(Canvas canvas, byte[] tile, int x, int y) {
    try (Frame frame = Codec.decode(tile).orElseThrow()) {
      canvas.paste(frame, x, y, TILE_WIDTH_PX, TILE_HEIGHT_PX);
    }
  }
}
