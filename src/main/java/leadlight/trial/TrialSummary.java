package leadlight.trial;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import leadlight.model.FindingKind;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;

/**
 * The figures of a trial on photos with truth.
 *
 * @param photos number of photos
 * @param rows rows right, not found, wrong
 * @param positions how exact the places are
 * @param all rates over all joints of found rows
 * @param byLamp the same by kind of light
 * @param byPitch the same by pixels per pitch; empty bands are left out
 * @param byFinding rates by kind of finding; kinds that neither truth nor opinion has are left out
 * @param jointsInRowsNotFound counted joints that were not scored as their row was not found
 */
public record TrialSummary(
    int photos,
    RowTally rows,
    Positions positions,
    Tally all,
    Map<String, Group> byLamp,
    Map<String, Group> byPitch,
    List<FindingTally> byFinding,
    int jointsInRowsNotFound) {

  /**
   * Part of the photos.
   *
   * @param rows its rows
   * @param joints its joints
   */
  public record Group(RowTally rows, Tally joints) {}

  /** Sums up. */
  public static TrialSummary of(List<PhotoOutcome> outcomes) {
    return new TrialSummary(
        outcomes.size(),
        rows(outcomes),
        Positions.of(outcomes),
        Tally.of(joints(outcomes)),
        groups(Band.byLamp(outcomes), outcomes),
        groups(Band.byPitch(), outcomes),
        findings(joints(outcomes)),
        unscored(outcomes));
  }

  private static RowTally rows(List<PhotoOutcome> outcomes) {
    return RowTally.of(outcomes.stream().map(PhotoOutcome::row).toList());
  }

  private static List<JointOutcome> joints(List<PhotoOutcome> outcomes) {
    return outcomes.stream().flatMap(outcome -> outcome.joints().stream()).toList();
  }

  private static Map<String, Group> groups(List<Band> bands, List<PhotoOutcome> outcomes) {
    Map<String, Group> groups = new LinkedHashMap<>();
    for (Band band : bands) {
      List<PhotoOutcome> mine = band.of(outcomes);
      if (!mine.isEmpty()) {
        groups.put(band.name(), new Group(rows(mine), Tally.of(joints(mine))));
      }
    }
    return groups;
  }

  private static List<FindingTally> findings(List<JointOutcome> joints) {
    return Arrays.stream(FindingKind.values())
        .map(kind -> FindingTally.of(kind, joints))
        .filter(tally -> tally.missed().of() > 0 || tally.calledInError().count() > 0)
        .toList();
  }

  private static int unscored(List<PhotoOutcome> outcomes) {
    return (int)
        outcomes.stream()
            .filter(outcome -> outcome.row() == RowResult.NOT_FOUND)
            .flatMap(outcome -> outcome.truth().joints().stream())
            .filter(joint -> joint.class2() != TrueClass.LIMIT)
            .count();
  }

  /**
   * A group of photos that is rated by itself.
   *
   * @param name name for people, as "ring" or "20-40 px"
   * @param photos which photos belong to it
   */
  private record Band(String name, Predicate<PhotoTruth> photos) {

    /** Bands of the operating range: refused, coarse, normal, full, shrunk. */
    private static final double[] EDGES_PX = {0, 10, 20, 40, 120, Double.POSITIVE_INFINITY};

    static List<Band> byLamp(List<PhotoOutcome> outcomes) {
      return outcomes.stream()
          .map(outcome -> outcome.truth().lamp())
          .distinct()
          .sorted()
          .map(lamp -> new Band(lamp, truth -> truth.lamp().equals(lamp)))
          .toList();
    }

    static List<Band> byPitch() {
      return IntStream.range(0, EDGES_PX.length - 1)
          .mapToObj(i -> ofPitch(EDGES_PX[i], EDGES_PX[i + 1]))
          .toList();
    }

    private static Band ofPitch(double fromPx, double toPx) {
      String name =
          Double.isInfinite(toPx)
              ? "above %.0f px".formatted(fromPx)
              : "%.0f-%.0f px".formatted(fromPx, toPx);
      return new Band(name, truth -> truth.pitchPx() >= fromPx && truth.pitchPx() < toPx);
    }

    List<PhotoOutcome> of(List<PhotoOutcome> outcomes) {
      return outcomes.stream().filter(outcome -> photos.test(outcome.truth())).toList();
    }
  }
}
