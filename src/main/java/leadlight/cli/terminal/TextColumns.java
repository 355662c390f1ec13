package leadlight.cli.terminal;

import java.util.List;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;

/** Aligned columns of plain text; the last one wraps, the others are as wide as their content. */
public final class TextColumns {

  /** The width of a small bench screen's terminal. */
  private static final int LINE = 100;

  private static final int GAP = 2;

  /** Least width of the last column; a table that needs more than a line goes over its end. */
  private static final int LAST = 24;

  private TextColumns() {}

  /** The lines of a table, each row one cell a column. */
  public static String lines(List<List<String>> rows) {
    if (rows.isEmpty()) {
      return "";
    }
    int count = rows.get(0).size();
    Column[] columns = new Column[count];
    int used = 0;
    for (int i = 0; i < count - 1; i++) {
      int column = i;
      int width = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0) + GAP;
      columns[i] = new Column(width, 0, Overflow.SPAN);
      used += width;
    }
    columns[count - 1] = new Column(Math.max(LAST, LINE - used), 0, Overflow.WRAP);
    TextTable table = TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF), columns);
    rows.forEach(row -> table.addRowValues(row.toArray(String[]::new)));
    return table.toString().replaceAll("\\h+(?=\\R)", "");
  }
}
