package leadlight.report.picture;

import java.util.ArrayList;
import java.util.List;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.paint.VerdictMark;
import leadlight.report.words.PictureWords;

/** The findings with evidence, rule and what to do at the bench; the worst come first. */
final class FindingTable implements Block {

  private static final int MOST_ROWS = 12;
  private static final int MARK_PX = 22;
  private static final int MARK_COLUMN_PX = 34;
  private static final int BETWEEN_COLUMNS_PX = 20;
  private static final int BETWEEN_ROWS_PX = 8;
  private static final List<String> HEADS = List.of("pin", "finding", "evidence", "rule", "bench");
  private static final int REASON = 2;
  private static final double[] SHARES = {0.10, 0.12, 0.28, 0.25, 0.25};

  private record Row(Entry entry, List<TextBlock> cells, int heightPx) {}

  private final int widthPx;
  private final List<String> heads;
  private final List<Row> rows = new ArrayList<>();
  private final TextBlock more;

  FindingTable(List<Entry> entries, int widthPx, PictureWords said) {
    this.widthPx = widthPx;
    this.heads = HEADS.stream().map(said::get).toList();
    for (Entry entry : entries.subList(0, Math.min(MOST_ROWS, entries.size()))) {
      rows.add(row(entry));
    }
    this.more = new TextBlock(widthPx);
    if (entries.size() > MOST_ROWS) {
      more.add(TextStyle.NOTE, said.get("more", entries.size() - MOST_ROWS));
    }
  }

  private Row row(Entry entry) {
    String[] texts = {entry.pins(), entry.what(), entry.evidence(), entry.clause(), entry.todo()};
    boolean alone = entry.clause().isEmpty() && entry.todo().isEmpty();
    List<TextBlock> cells = new ArrayList<>();
    int height = MARK_PX;
    for (int i = 0; i < texts.length; i++) {
      TextBlock cell = new TextBlock(i == REASON && alone ? restPx() : columnPx(i));
      cell.add(i < 2 ? TextStyle.BODY_BOLD : TextStyle.BODY, texts[i]);
      height = Math.max(height, cell.heightPx());
      cells.add(cell);
    }
    return new Row(entry, cells, height);
  }

  /** From the evidence to the right edge: a reason that stands alone may use it all. */
  private int restPx() {
    return columnPx(REASON) + columnPx(REASON + 1) + columnPx(REASON + 2) + 2 * BETWEEN_COLUMNS_PX;
  }

  private int columnPx(int column) {
    return (int) ((widthPx - MARK_COLUMN_PX) * SHARES[column]) - BETWEEN_COLUMNS_PX;
  }

  @Override
  public int heightPx() {
    if (rows.isEmpty()) {
      return 0;
    }
    int height = TextStyle.NOTE.lineHeightPx() + BETWEEN_ROWS_PX + more.heightPx();
    for (Row row : rows) {
      height += row.heightPx() + BETWEEN_ROWS_PX;
    }
    return height;
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    if (rows.isEmpty()) {
      return;
    }
    int left = x + MARK_COLUMN_PX;
    for (int i = 0; i < heads.size(); i++) {
      pen.text(TextStyle.NOTE, heads.get(i), left, y + 14);
      left += columnPx(i) + BETWEEN_COLUMNS_PX;
    }
    int down = y + TextStyle.NOTE.lineHeightPx() + BETWEEN_ROWS_PX;
    for (Row row : rows) {
      pen.rect(Pen.RULE, x, down - BETWEEN_ROWS_PX / 2, widthPx, 1);
      VerdictMark.draw(pen, row.entry().verdict(), x + MARK_PX / 2.0, down + 12, MARK_PX);
      left = x + MARK_COLUMN_PX;
      for (int i = 0; i < heads.size(); i++) {
        row.cells().get(i).paint(pen, left, down);
        left += columnPx(i) + BETWEEN_COLUMNS_PX;
      }
      down += row.heightPx() + BETWEEN_ROWS_PX;
    }
    more.paint(pen, x, down);
  }
}
