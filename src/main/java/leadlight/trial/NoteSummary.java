package leadlight.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import leadlight.model.Verdict;
import leadlight.numeric.Quantiles;
import leadlight.statistics.ClusterRate;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.RowNote;

/**
 * The figures of a trial on real photos.
 *
 * @param photos number of photos
 * @param rows rows right, not found, wrong
 * @param groups the same by scale, with what was said of the joints of factory rows
 */
public record NoteSummary(int photos, RowTally rows, Map<String, Group> groups) {

  /** Below this a photo shows coarse faults only. */
  private static final double COARSE_BELOW_PX = 15;

  /**
   * Part of the photos.
   *
   * @param rows rows right, not found, wrong
   * @param lateralMedian median over its right rows of their median distance across the leads, over
   *     the pitch; NaN if no row is right
   * @param factoryDefects joints called a defect, of all joints of found factory rows
   * @param factoryUnjudged joints unjudged, of the same
   * @param otherDefects joints called a defect, of all joints of found rows that were soldered or
   *     touched up by hand
   */
  public record Group(
      RowTally rows,
      double lateralMedian,
      ClusterRate factoryDefects,
      ClusterRate factoryUnjudged,
      ClusterRate otherDefects) {}

  /** Sums up. */
  public static NoteSummary of(List<NoteOutcome> outcomes) {
    Map<String, Group> groups = new LinkedHashMap<>();
    groups.put(
        "below %.0f px".formatted(COARSE_BELOW_PX),
        group(outcomes, note -> note.pitchPx() < COARSE_BELOW_PX));
    groups.put(
        "from %.0f px".formatted(COARSE_BELOW_PX),
        group(outcomes, note -> note.pitchPx() >= COARSE_BELOW_PX));
    return new NoteSummary(outcomes.size(), rows(outcomes), groups);
  }

  private static RowTally rows(List<NoteOutcome> outcomes) {
    return RowTally.of(outcomes.stream().map(NoteOutcome::row).toList());
  }

  private static Group group(List<NoteOutcome> all, Predicate<RowNote> belongs) {
    List<NoteOutcome> mine = all.stream().filter(one -> belongs.test(one.note())).toList();
    double[] medians =
        mine.stream()
            .filter(one -> one.row() == RowResult.RIGHT)
            .mapToDouble(NoteOutcome::medianOfPitch)
            .toArray();
    return new Group(
        rows(mine),
        Quantiles.middle(medians),
        rate(mine, true, Verdict.DEFECT),
        rate(mine, true, Verdict.UNJUDGED),
        rate(mine, false, Verdict.DEFECT));
  }

  /** By photo, as its joints are alike. */
  private static ClusterRate rate(List<NoteOutcome> outcomes, boolean factory, Verdict which) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    for (NoteOutcome one : outcomes) {
      if (one.note().factory() == factory) {
        one.verdicts().forEach(verdict -> rate.add(one.note().photo(), verdict == which));
      }
    }
    return rate.rate();
  }
}
