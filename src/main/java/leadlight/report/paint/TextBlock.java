package leadlight.report.paint;

import java.util.ArrayList;
import java.util.List;

/** Paragraphs of one width. */
public final class TextBlock implements Block {

  private static final int BETWEEN_PARAGRAPHS_PX = 5;

  private record Line(TextStyle style, String text, int dropPx) {}

  private final int widthPx;
  private final List<Line> lines = new ArrayList<>();
  private int heightPx;

  public TextBlock(int widthPx) {
    this.widthPx = widthPx;
  }

  public TextBlock add(TextStyle style, String text) {
    if (!lines.isEmpty()) {
      heightPx += BETWEEN_PARAGRAPHS_PX;
    }
    for (String line : style.wrapped(text, widthPx)) {
      heightPx += style.lineHeightPx();
      lines.add(new Line(style, line, heightPx - (int) Math.round(0.35 * style.sizePx())));
    }
    return this;
  }

  public TextBlock addAll(TextStyle style, List<String> texts) {
    texts.forEach(text -> add(style, text));
    return this;
  }

  @Override
  public int heightPx() {
    return heightPx;
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    for (Line line : lines) {
      pen.text(line.style(), line.text(), x, y + line.dropPx());
    }
  }
}
