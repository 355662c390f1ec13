package leadlight.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What several photos of a row tell that one does not. */
public final class SameRowTally {

  private final Map<Integer, List<PhotoOutcome>> byPhotos = new TreeMap<>();
  private int others;
  private int refused;
  private int rows;
  private int rowsJoined;
  private int worseGood;
  private int worseCalls;

  /** Adds a photo scored alone. */
  public void alone(PhotoOutcome outcome) {
    add(1, outcome);
  }

  /**
   * Adds a joined row.
   *
   * @param photos how many were joined
   * @param outcome what came of it
   * @param alone the photos of the row by themselves
   * @param refusedPhotos how many of them were not taken
   */
  public void joined(
      int photos, PhotoOutcome outcome, List<PhotoOutcome> alone, int refusedPhotos) {
    add(photos, outcome);
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

  private void add(int photos, PhotoOutcome outcome) {
    byPhotos.computeIfAbsent(photos, n -> new ArrayList<>()).add(outcome);
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
    lines.add(
        "errors that all photos together made and none alone: wrong good "
            + worseGood
            + ", false calls "
            + worseCalls);
    return lines;
  }

  private static String row(int photos, List<PhotoOutcome> outcomes) {
    List<JointOutcome> joints =
        outcomes.stream()
            .filter(o -> o.row() == RowResult.RIGHT)
            .flatMap(o -> o.joints().stream())
            .filter(JointOutcome::counted)
            .toList();
    long defects = joints.stream().filter(j -> j.truth().class2() == TrueClass.DEFECT).count();
    return "| %d | %d of %d | %s | %s | %s |"
        .formatted(
            photos,
            outcomes.stream().filter(o -> o.row() == RowResult.RIGHT).count(),
            outcomes.size(),
            rate(joints, JointResult.MISSED, (int) defects),
            rate(joints, JointResult.FALSE_CALL, joints.size() - (int) defects),
            rate(joints, JointResult.UNJUDGED, joints.size()));
  }

  private static String rate(List<JointOutcome> joints, JointResult what, int of) {
    return TrialTable.plain((int) joints.stream().filter(j -> j.result() == what).count(), of, 1);
  }
}
