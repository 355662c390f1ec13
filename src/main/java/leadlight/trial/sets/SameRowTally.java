package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.TrueClass;

/** What several photos of a row tell that one does not. */
public final class SameRowTally {

  private record Seen(Object row, PhotoOutcome outcome) {}

  private final Map<Integer, List<Seen>> byPhotos = new TreeMap<>();
  private int others;
  private int refused;
  private int rows;
  private int rowsJoined;
  private int worseGood;
  private int worseCalls;

  /**
   * Adds a photo scored alone.
   *
   * @param row tells its row from others
   */
  public void alone(Object row, PhotoOutcome outcome) {
    add(1, row, outcome);
  }

  /**
   * Adds a joined row.
   *
   * @param row tells it from others
   * @param photos how many were joined
   * @param outcome what came of it
   * @param alone the photos of the row by themselves
   * @param refusedPhotos how many of them were not taken
   */
  public void joined(
      Object row, int photos, PhotoOutcome outcome, List<PhotoOutcome> alone, int refusedPhotos) {
    add(photos, row, outcome);
    others += photos - 1;
    refused += refusedPhotos;
    if (photos == alone.size()) {
      rows++;
      rowsJoined += refusedPhotos == 0 ? 1 : 0;
      for (JointOutcome joint : outcome.joints()) {
        worseGood += newly(joint, alone, JointResult.MISSED) ? 1 : 0;
        worseCalls += newly(joint, alone, JointResult.FALSE_CALL) ? 1 : 0;
      }
    }
  }

  /** Whether joining made an error that no single photo made. */
  private static boolean newly(JointOutcome joint, List<PhotoOutcome> alone, JointResult error) {
    return joint.result() == error
        && alone.stream()
            .flatMap(photo -> photo.joints().stream())
            .filter(one -> one.truth().pin() == joint.truth().pin())
            .noneMatch(one -> one.result() == error);
  }

  private void add(int photos, Object row, PhotoOutcome outcome) {
    byPhotos.computeIfAbsent(photos, n -> new ArrayList<>()).add(new Seen(row, outcome));
  }

  /** The table. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "photos joined: %d of %d; rows of which all photos were: %d of %d",
            others - refused,
            others,
            rowsJoined,
            rows));
    lines.add("| photos | rows found | wrong good | false calls | unjudged |");
    lines.add("|---|---|---|---|---|");
    byPhotos.forEach((photos, outcomes) -> lines.add(row(photos, outcomes)));
    lines.add("95 % intervals by row (Wilson at the effective number of joints)");
    lines.add(
        "errors that all photos together made and none alone: wrong good "
            + worseGood
            + ", false calls "
            + worseCalls);
    return lines;
  }

  private static String row(int photos, List<Seen> seen) {
    List<Seen> found = seen.stream().filter(o -> o.outcome().row() == RowResult.RIGHT).toList();
    return "| %d | %d of %d | %s | %s | %s |"
        .formatted(
            photos,
            found.size(),
            seen.size(),
            rate(found, JointResult.MISSED, SameRowTally::defect),
            rate(found, JointResult.FALSE_CALL, joint -> !defect(joint)),
            rate(found, JointResult.UNJUDGED, joint -> true));
  }

  private static boolean defect(JointOutcome joint) {
    return joint.truth().class2() == TrueClass.DEFECT;
  }

  /** By row: its joints are seen again with each photo that comes first. */
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
