package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.TrueClass;

/** What a stacked burst tells beside its frames. */
public final class BurstTally {

  private final List<Row> rows = new ArrayList<>();

  /**
   * One burst.
   *
   * @param name tells it from others
   * @param frames each by itself
   * @param sharpest the sharpest of them by itself; empty if nothing was stacked
   * @param stack all of them
   * @param refused frames that were left out
   */
  public record Row(
      String name,
      List<PhotoOutcome> frames,
      Optional<PhotoOutcome> sharpest,
      Optional<PhotoOutcome> stack,
      int refused) {

    /** The frame with the fewest errors, then the fewest joints unjudged. */
    private PhotoOutcome best() {
      return frames.stream()
          .filter(frame -> frame.row() == RowResult.RIGHT)
          .min(
              Comparator.<PhotoOutcome>comparingLong(BurstTally::errors)
                  .thenComparingLong(frame -> count(frame, JointResult.UNJUDGED)))
          .orElse(frames.get(0));
    }
  }

  /** Adds one. */
  public void add(Row row) {
    rows.add(row);
  }

  private static long errors(PhotoOutcome outcome) {
    return count(outcome, JointResult.MISSED) + count(outcome, JointResult.FALSE_CALL);
  }

  private static long count(PhotoOutcome outcome, JointResult what) {
    return outcome.joints().stream()
        .filter(JointOutcome::counted)
        .filter(joint -> joint.result() == what)
        .count();
  }

  /** The table. */
  public List<String> lines() {
    List<Row> stacked = rows.stream().filter(row -> row.stack().isPresent()).toList();
    List<String> lines = new ArrayList<>();
    lines.add(
        "bursts: %d, stacked %d, frames left out %d"
            .formatted(rows.size(), stacked.size(), rows.stream().mapToInt(Row::refused).sum()));
    lines.add("| of each burst | rows right | wrong good | false calls | unjudged |");
    lines.add("|---|---|---|---|---|");
    lines.add(line("all frames", stacked, Row::frames));
    lines.add(line("sharpest frame", stacked, row -> List.of(row.sharpest().orElseThrow())));
    lines.add(line("best frame, by truth", stacked, row -> List.of(row.best())));
    lines.add(line("stack", stacked, row -> List.of(row.stack().orElseThrow())));
    lines.add("95 % intervals by row (Wilson at the effective number of joints)");
    lines.add(
        "bursts whose stack has more errors than their best frame: "
            + stacked.stream()
                .filter(row -> errors(row.stack().orElseThrow()) > errors(row.best()))
                .map(Row::name)
                .toList());
    return lines;
  }

  private static String line(String name, List<Row> rows, Function<Row, List<PhotoOutcome>> which) {
    List<Seen> seen =
        rows.stream()
            .flatMap(row -> which.apply(row).stream().map(o -> new Seen(row.name(), o)))
            .toList();
    List<Seen> right = seen.stream().filter(s -> s.outcome().row() == RowResult.RIGHT).toList();
    return "| %s | %d of %d | %s | %s | %s |"
        .formatted(
            name,
            right.size(),
            seen.size(),
            rate(right, JointResult.MISSED, BurstTally::defect),
            rate(right, JointResult.FALSE_CALL, joint -> !defect(joint)),
            rate(right, JointResult.UNJUDGED, joint -> true));
  }

  private record Seen(String row, PhotoOutcome outcome) {}

  private static boolean defect(JointOutcome joint) {
    return joint.truth().class2() == TrueClass.DEFECT;
  }

  private static String rate(List<Seen> seen, JointResult what, Predicate<JointOutcome> of) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    for (Seen one : seen) {
      one.outcome().joints().stream()
          .filter(JointOutcome::counted)
          .filter(of)
          .forEach(joint -> rate.add(one.row(), joint.result() == what));
    }
    return TrialTable.plain(rate.rate(), 1);
  }
}
