package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.quality.Stages;
import leadlight.quality.Table;

/** The lines of each board's last stage: defects that were mended since are not counted again. */
public final class StageRows {

  /** No stage is repeated more often; a larger number is one that was mistyped. */
  private static final int MOST_TIMES = 900;

  private StageRows() {}

  /**
   * All lines if there is no column stage, if the stages are what is compared, or if there is one
   * alone; else those of each board's last stage.
   *
   * @throws leadlight.model.UserError if a stage is unknown, or stages are mixed without a board
   */
  public static List<Table.Row> last(Table table, String by) {
    if (!table.has("stage") || by.equals("stage")) {
      return table.rows();
    }
    if (table.rows().stream().mapToInt(StageRows::stage).distinct().count() == 1) {
      return table.rows();
    }
    Map<List<String>, Integer> last = new HashMap<>();
    for (Table.Row row : table.rows()) {
      last.merge(board(row, table), stage(row), Math::max);
    }
    List<Table.Row> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      if (stage(row) == last.get(board(row, table))) {
        rows.add(row);
      }
    }
    return rows;
  }

  private static List<String> board(Table.Row row, Table table) {
    if (!table.has("board")) {
      throw row.trouble(
          "stages can only be told apart by board; add a column \"board\", or chart one stage");
    }
    Optional<String> job = table.has("job") ? row.maybe("job") : Optional.empty();
    return List.of(job.orElse(""), row.text("board"));
  }

  /** Stage, then attempt. */
  private static int stage(Table.Row row) {
    String name = row.text("stage");
    int place =
        Stages.place(name)
            .orElseThrow(
                () -> row.trouble("stage", "\"" + name + "\" is no stage; " + Stages.names()));
    return row.maybe("attempt").isPresent()
        ? place - 1 + Math.min(MOST_TIMES, row.count("attempt"))
        : place;
  }
}
