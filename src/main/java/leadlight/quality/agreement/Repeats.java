package leadlight.quality.agreement;

import java.util.Optional;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.statistics.ClusterRate;

/** How well a grader agrees with itself. */
final class Repeats {

  private Repeats() {}

  /** Items with the same category in every trial; empty if there is only one trial. */
  static Optional<ClusterRate> of(Grades grades, Reading reading, String grader) {
    if (grades.trials(grader) < 2) {
      return Optional.empty();
    }
    ClusterRate.Builder same = new ClusterRate.Builder();
    for (String item : grades.complete(grader)) {
      same.add(
          Grades.cluster(item),
          grades.of(grader, item).stream().map(reading::category).distinct().count() == 1);
    }
    return Optional.of(same.rate());
  }
}
