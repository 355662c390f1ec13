package leadlight.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.statistics.Rate;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.RowNote;
import leadlight.trial.truth.RowNote.Grade;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

class GradedRowsTest {

  /** One joint: its grade, what was said, how suspect it was. */
  private record One(Grade grade, Verdict verdict, double suspicion) {}

  private static NoteOutcome row(RowResult result, One... joints) {
    Map<Integer, Grade> grades = new TreeMap<>();
    List<GradedJoint> said = new ArrayList<>();
    List<Double> suspicions = new ArrayList<>();
    for (int i = 0; i < joints.length; i++) {
      grades.put(i + 1, joints[i].grade());
      suspicions.add(joints[i].suspicion());
      said.add(
          Truths.opinion(Truths.joint(i + 1, TrueClass.ACCEPTABLE), joints[i].verdict(), 0, 0));
    }
    boolean found = result != RowResult.NOT_FOUND;
    return new NoteOutcome(
        note(joints.length, grades),
        result,
        0,
        true,
        "",
        found ? suspicions : List.of(),
        found ? suspicions : List.of(),
        found ? said : List.of());
  }

  private static RowNote note(int leads, Map<Integer, Grade> grades) {
    List<PointPx> middles =
        IntStream.range(0, leads).mapToObj(i -> new PointPx(40.0 * i, 0)).toList();
    return new RowNote(
        "f.jpg", "QFP", leads, 40, 0.5, false, new PointPx(0, -1), middles, 15, false, "", grades);
  }

  private final NoteOutcome first =
      row(
          RowResult.RIGHT,
          new One(Grade.BAD, Verdict.PROCESS_INDICATOR, 0.1),
          new One(Grade.BAD, Verdict.DEFECT, 0.9),
          new One(Grade.GOOD, Verdict.ACCEPTABLE, 0.2),
          new One(Grade.GOOD, Verdict.DEFECT, 0.9),
          new One(Grade.UNSURE, Verdict.ACCEPTABLE, 0.99));
  private final NoteOutcome second =
      row(
          RowResult.WRONG,
          new One(Grade.BAD, Verdict.UNJUDGED, 0.5),
          new One(Grade.GOOD, Verdict.UNJUDGED, 0.4),
          new One(Grade.GOOD, Verdict.ACCEPTABLE, 0.3));
  private final NoteOutcome lost =
      row(
          RowResult.NOT_FOUND,
          Collections.nCopies(3, new One(Grade.BAD, Verdict.DEFECT, 1)).toArray(new One[0]));

  @Test
  void badAndGoodJointsAreCountedByWhatWasSaid() {
    GradedRows rows = GradedRows.of(List.of(first, second, lost));

    assertThat(rows.badSaidGood().plain()).isEqualTo(new Rate(1, 3));
    assertThat(rows.badCalled().plain()).isEqualTo(new Rate(1, 3));
    assertThat(rows.badUnjudged().plain()).isEqualTo(new Rate(1, 3));
    assertThat(rows.goodCalled().plain()).isEqualTo(new Rate(1, 4));
    assertThat(rows.goodSaidGood().plain()).isEqualTo(new Rate(2, 4));
    assertThat(rows.goodUnjudged().plain()).isEqualTo(new Rate(1, 4));
    assertThat(rows.notFound().plain()).as("three of ten").isEqualTo(new Rate(3, 10));
  }

  /**
   * By hand: of the first row 0.1 beats none of 0.2 and 0.9; 0.9 beats 0.2 and ties with 0.9: 1.5
   * of 4. Of the second 0.5 beats both: 3.5 of 6 within rows. Over all: 0.1 beats none, 0.9 beats
   * three and ties once, 0.5 beats 0.2, 0.4 and 0.3: 6.5 of 12.
   */
  @Test
  void suspicionIsRatedByPairsOverAllAndWithinRows() {
    GradedRows rows = GradedRows.of(List.of(first, second, lost));

    assertThat(rows.aucWithinRows()).isCloseTo(3.5 / 6, within(1e-12));
    assertThat(rows.auc()).isCloseTo(6.5 / 12, within(1e-12));
  }

  @Test
  void theTableSaysGoodSaidOfBad() {
    String table = NoteTable.of(NoteSummary.of(List.of(first, second)), List.of(first, second));

    assertThat(table).contains("bad: good said of bad       1/3  33.3 %");
  }

  @Test
  void rowsWithoutGradesAddNothing() {
    NoteOutcome plain =
        new NoteOutcome(
            note(3, Map.of()), RowResult.NOT_FOUND, 0, true, "", List.of(), List.of(), List.of());
    assertThat(GradedRows.of(List.of(plain)).any()).isFalse();
  }
}
