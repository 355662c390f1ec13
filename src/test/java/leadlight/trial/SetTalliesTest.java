package leadlight.trial;

import static leadlight.trial.Truths.joint;
import static leadlight.trial.Truths.opinion;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.Nudge.Motion;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.sets.NudgeTally;
import leadlight.trial.sets.SameRowTally;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.NudgeTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

/** What is seen of one row again and again is no more proof than the row: intervals are by row. */
class SetTalliesTest {

  private static PhotoOutcome unjudged(int joints) {
    PhotoTruth truth =
        Truths.row(
            IntStream.rangeClosed(1, 10)
                .mapToObj(pin -> joint(pin, TrueClass.ACCEPTABLE))
                .toArray(JointTruth[]::new));
    List<GradedJoint> said = new ArrayList<>();
    truth
        .joints()
        .forEach(
            it ->
                said.add(
                    opinion(it, it.pin() <= joints ? Verdict.UNJUDGED : Verdict.ACCEPTABLE, 0, 0)));
    return Comparison.of(truth, Truths.scored(truth, said));
  }

  private static String of(int count, int all, int photosARow, int rows) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    for (int row = 0; row < rows; row++) {
      rate.add(row, row == 0 ? count : 0, all * photosARow);
    }
    return TrialTable.plain(rate.rate(), 1);
  }

  @Test
  void photosOfOneRowAreOneCluster() {
    SameRowTally tally = new SameRowTally();
    for (String row : List.of("a", "b", "c", "d")) {
      for (int photo = 0; photo < 3; photo++) {
        tally.alone(row, unjudged(row.equals("a") ? 4 : 0));
      }
    }

    String line =
        tally.lines().stream().filter(l -> l.startsWith("| 1 |")).findFirst().orElseThrow();
    assertThat(line)
        .endsWith("| " + of(12, 10, 3, 4) + " |")
        .doesNotContain(TrialTable.plain(new Rate(12, 120), 1));
    assertThat(tally.lines().get(tally.lines().size() - 2)).contains("by row");
  }

  @Test
  void pushesOfOneRowAreOneCluster() {
    NudgeTally tally = new NudgeTally();
    for (String row : List.of("a", "b", "c", "d")) {
      for (int pin = 1; pin <= 10; pin++) {
        NudgeTruth.Pushed truth =
            new NudgeTruth.Pushed(Path.of(row), Path.of(row + pin), pin, 40, true);
        int said = row.equals("a") && pin <= 6 ? 0 : pin;
        tally.add(new NudgeTally.Outcome(truth, 40, said, Motion.MOVES, 40, 5, ""));
      }
    }

    ClusterRate.Builder right = new ClusterRate.Builder();
    right.add("a", 4, 10).add("b", 10, 10).add("c", 10, 10).add("d", 10, 10);
    assertThat(tally.lines().get(2))
        .contains("| " + TrialTable.plain(right.rate(), 0) + " |")
        .doesNotContain(TrialTable.plain(new Rate(34, 40), 0));
  }
}
