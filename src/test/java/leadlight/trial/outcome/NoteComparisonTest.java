package leadlight.trial.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.statistics.Rate;
import leadlight.trial.NoteSummary;
import leadlight.trial.Truths;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.RowNote;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

class NoteComparisonTest {

  private final PhotoTruth truth =
      Truths.row(
          Truths.joint(1, TrueClass.ACCEPTABLE),
          Truths.joint(2, TrueClass.ACCEPTABLE),
          Truths.joint(3, TrueClass.ACCEPTABLE));

  /** Notes of the middles of the feet of {@link Truths}, 30 px long. */
  private RowNote note(double pitchPx, boolean factory) {
    List<PointPx> middles = List.of(at(50), at(90), at(130));
    return new RowNote(
        "row.png",
        "QFP",
        3,
        pitchPx,
        0.5,
        false,
        new PointPx(0, -1),
        middles,
        15,
        factory,
        "",
        Map.of());
  }

  private static PointPx at(double x) {
    return new PointPx(x, 85);
  }

  private NoteOutcome outcome(RowNote note, double dx, double dy, Verdict verdict) {
    List<GradedJoint> joints = new ArrayList<>();
    truth.joints().forEach(joint -> joints.add(Truths.opinion(joint, verdict, dx, dy)));
    return NoteComparison.of(note, Truths.scored(truth, joints), joint -> 0, joint -> 0);
  }

  @Test
  void acrossTheLeadsTheLimitIsAThirdOfAPitch() {
    RowNote note = note(40, true);

    assertThat(outcome(note, 13.9, 0, Verdict.ACCEPTABLE).row()).isEqualTo(RowResult.RIGHT);
    assertThat(outcome(note, 14.1, 0, Verdict.ACCEPTABLE).row()).isEqualTo(RowResult.WRONG);
  }

  @Test
  void alongTheLeadsItIsToldIfTheyMissTheNotedOnes() {
    RowNote note = note(40, true);

    assertThat(outcome(note, 0, 29, Verdict.ACCEPTABLE).overlaps()).isTrue();
    assertThat(outcome(note, 0, 31, Verdict.ACCEPTABLE).overlaps()).isFalse();
    assertThat(outcome(note, 0, 31, Verdict.ACCEPTABLE).row()).isEqualTo(RowResult.RIGHT);
  }

  @Test
  void callsOnFactoryJointsAreCountedApartByScale() {
    NoteSummary summary =
        NoteSummary.of(
            List.of(
                outcome(note(40, true), 0, 0, Verdict.DEFECT),
                outcome(note(14, true), 0, 0, Verdict.UNJUDGED),
                outcome(note(40, false), 0, 0, Verdict.DEFECT)));

    assertThat(summary.groups().get("from 15 px").factoryDefects().plain())
        .isEqualTo(new Rate(3, 3));
    assertThat(summary.groups().get("from 15 px").otherDefects().plain()).isEqualTo(new Rate(3, 3));
    assertThat(summary.groups().get("below 15 px").factoryDefects().plain())
        .isEqualTo(new Rate(0, 3));
    assertThat(summary.groups().get("below 15 px").factoryUnjudged().plain())
        .isEqualTo(new Rate(3, 3));
    assertThat(summary.rows().right()).isEqualTo(new Rate(3, 3));
  }
}
