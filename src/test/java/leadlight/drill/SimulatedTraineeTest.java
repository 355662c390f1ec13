package leadlight.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import leadlight.drill.sitting.Refused;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.record.DrillRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trainee of known skill through twenty sets. docs/drill.md has the figures of more of them. */
class SimulatedTraineeTest {

  /** Weak findings are two of six; without a schedule they are a third of the defects. */
  private static final double UNSCHEDULED = 1.0 / 3;

  @TempDir private Path folder;

  @Test
  void theRecordsRatesHoldTheKnownSkillAndImprove() throws Refused {
    try (DrillRecord record = DrillRecord.open(folder)) {
      SimulatedTrainee trainee = new SimulatedTrainee(1, true);
      int held = 0;
      for (int set = 0; set < SimulatedTrainee.SETS; set++) {
        SimulatedTrainee.Went went = trainee.take(set, record);
        List<History.Sat> sat = History.of(record, "simulated").drills();
        Figures shown = Figures.of(sat.get(sat.size() - 1).answers()).orElseThrow();
        held += DrillSkill.holds(shown.missed(), went.known()) ? 1 : 0;
        held += DrillSkill.holds(shown.falseAlarm(), went.knownAlarm()) ? 1 : 0;
      }
      // Of 40 intervals at 95 %, fewer than 34 would hold in less than 1 of 100 cases.
      assertThat(held).isGreaterThanOrEqualTo(34);
      History history = History.of(record, "simulated");
      assertThat(history.drills()).hasSize(20);
      assertThat(history.recent().orElseThrow().missed().share())
          .isLessThan(history.figures().orElseThrow().missed().share());
      assertThat(history.findings().get(0).finding()).isIn(SimulatedTrainee.WEAK);
      assertThat(history.findings().get(1).finding()).isIn(SimulatedTrainee.WEAK);
    }
  }

  @Test
  void intervalsHoldTheKnownRateAtLeastAsOftenAsTheySay() {
    DrillSkill skill = DrillSkill.of(60, true);
    // Wider than need be, so that all may hold: this trainee misses each joint by itself, and
    // joints of a photo may be alike. ClusterRateTest holds how wide.
    assertThat(skill.missedCovered().share()).isGreaterThanOrEqualTo(0.95);
    assertThat(skill.alarmsCovered().share()).isGreaterThanOrEqualTo(0.95);
    assertThat(skill.recentCovered().share()).isGreaterThan(0.88);
  }

  @Test
  void theScheduleShiftsSetsToWeakFindings() {
    assertThat(later(DrillSkill.of(60, true))).isGreaterThan(UNSCHEDULED + 0.1);
    assertThat(later(DrillSkill.of(60, false))).isBetween(UNSCHEDULED - 0.03, UNSCHEDULED + 0.03);
  }

  private static double later(DrillSkill skill) {
    return Arrays.stream(skill.weakShare(), 5, SimulatedTrainee.SETS).average().orElseThrow();
  }
}
