package leadlight.trial;

import java.util.List;
import leadlight.statistics.Rate;
import leadlight.trial.outcome.RowResult;

/**
 * How many rows were right.
 *
 * @param right right, of all
 * @param notFound not found, of all
 * @param wrong wrong, of all
 */
public record RowTally(Rate right, Rate notFound, Rate wrong) {

  /** Counts rows. */
  public static RowTally of(List<RowResult> rows) {
    return new RowTally(
        rate(rows, RowResult.RIGHT), rate(rows, RowResult.NOT_FOUND), rate(rows, RowResult.WRONG));
  }

  private static Rate rate(List<RowResult> rows, RowResult result) {
    return new Rate((int) rows.stream().filter(row -> row == result).count(), rows.size());
  }
}
