package leadlight.record.scoring;

import java.time.LocalDate;
import java.util.Optional;
import leadlight.model.FindingKind;

/**
 * Which scorings are meant; an empty field leaves all.
 *
 * @param job the job's name
 * @param board the board's name
 * @param from first day of scoring, in the zone it was scored in
 * @param to last day of scoring
 * @param connector the connector's id
 * @param finding a joint has this finding, as it counts
 * @param run the run that they belong to
 * @param latest only the last scoring, up to the last day, of each photo of a board's stage by one
 *     row and class
 */
public record Search(
    Optional<String> job,
    Optional<String> board,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    Optional<String> connector,
    Optional<FindingKind> finding,
    Optional<Long> run,
    boolean latest) {

  /** All that is in the record. */
  public static Search all() {
    return new Search(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  /** The scorings of a board. */
  public static Search ofBoard(String job, String board) {
    Search all = all();
    return new Search(
        Optional.of(job),
        Optional.of(board),
        all.from,
        all.to,
        all.connector,
        all.finding,
        all.run,
        false);
  }

  /** The scorings that a run made or found unchanged. */
  public static Search ofRun(long run) {
    Search all = all();
    return new Search(
        all.job, all.board, all.from, all.to, all.connector, all.finding, Optional.of(run), false);
  }

  /** The scorings of a day, without those that a later one of that day replaced. */
  public static Search ofDay(LocalDate day) {
    Search all = all();
    return new Search(
        all.job,
        all.board,
        Optional.of(day),
        Optional.of(day),
        all.connector,
        all.finding,
        all.run,
        true);
  }

  /** Whether a day is one of those that are meant. */
  public boolean isOn(LocalDate day) {
    return from.filter(day::isBefore).isEmpty() && to.filter(day::isAfter).isEmpty();
  }

  /** The same without scorings that a later one replaced. */
  public Search latestOnly() {
    return new Search(job, board, from, to, connector, finding, run, true);
  }
}
