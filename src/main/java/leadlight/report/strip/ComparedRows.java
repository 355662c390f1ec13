package leadlight.report.strip;

import java.util.ArrayList;
import java.util.List;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.Sheet;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.words.PictureWords;

/**
 * A row at two stages in one picture, one above the other, pin above pin, with a word between them
 * where a pin changed, and the changes in words below.
 */
public final class ComparedRows {

  private ComparedRows() {}

  /**
   * The picture, a PNG file. The bytes depend on the arguments alone.
   *
   * @param title what both are of
   * @param words a word for each pin that changed, empty for the others; pin 1 first
   * @param lines the changes in sentences
   * @param said the language
   */
  public static byte[] png(
      String title,
      ShownRow before,
      ShownRow after,
      List<String> words,
      List<String> lines,
      PictureWords said) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new TextBlock(Sheet.CONTENT_PX).add(TextStyle.TITLE, title));
    StripGeometry one = geometry(before, Sheet.CONTENT_PX - Sheet.BESIDE_STRIP_PX);
    StripGeometry two = geometry(after, Sheet.CONTENT_PX - Sheet.BESIDE_STRIP_PX);
    int common = Math.min(widest(one), widest(two)) + 1;
    one = geometry(before, common);
    two = geometry(after, common);
    for (int i = 0; i < Math.max(one.strips().size(), two.strips().size()); i++) {
      strip(blocks, before, one, i, said);
      if (i < two.strips().size()) {
        blocks.add(new ChangeLane(two, two.strips().get(i), words));
      }
      strip(blocks, after, two, i, said);
    }
    blocks.add(new TextBlock(Sheet.CONTENT_PX).addAll(TextStyle.BODY, lines));
    blocks.add(
        new TextBlock(Sheet.CONTENT_PX).add(TextStyle.NOTE, said.words().get("page.certificate")));
    return Sheet.png(blocks);
  }

  private static StripGeometry geometry(ShownRow row, int widthPx) {
    return new StripGeometry(row.found(), row.spec(), row.joints(), widthPx);
  }

  private static int widest(StripGeometry geometry) {
    return geometry.strips().stream().mapToInt(geometry::widthPx).max().orElseThrow();
  }

  private static void strip(
      List<Block> blocks, ShownRow row, StripGeometry geometry, int fold, PictureWords said) {
    if (fold < geometry.strips().size()) {
      blocks.add(
          new TextBlock(Sheet.CONTENT_PX)
              .add(TextStyle.STRONG, row.title() + ": " + said.counts(row.joints())));
      blocks.add(
          new RowStrip(geometry, geometry.strips().get(fold), row.joints(), row.picture(), said));
    }
  }

  /** Between a row before and after: a line and a word at each pin that changed. */
  private static final class ChangeLane implements Block {

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
}
