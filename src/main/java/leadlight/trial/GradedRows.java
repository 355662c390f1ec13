package leadlight.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import leadlight.model.Verdict;
import leadlight.statistics.ClusterRate;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.truth.RowNote;

/**
 * What was said of the joints of real rows that a careful eye has graded; those it was unsure of
 * are not counted.
 *
 * @param badSaidGood bad joints called acceptable or process indicator, of the bad ones of found
 *     rows
 * @param badCalled bad joints called a defect, of the same
 * @param badUnjudged bad joints unjudged, of the same
 * @param goodCalled good joints called a defect, of the good ones of found rows
 * @param goodSaidGood good joints called acceptable or process indicator, of the same
 * @param goodUnjudged good joints unjudged, of the same
 * @param notFound graded joints in rows that were not found, of all
 * @param auc how well the chance that nothing holds a lead tells bad from good over all joints: the
 *     share of pairs of a bad and a good one in which the bad one has more, ties half (area under
 *     the receiver's curve, Hanley and McNeil 1982); NaN without a pair
 * @param aucWithinRows the same over pairs of one row, by the order in which they are to be prodded
 */
public record GradedRows(
    ClusterRate badSaidGood,
    ClusterRate badCalled,
    ClusterRate badUnjudged,
    ClusterRate goodCalled,
    ClusterRate goodSaidGood,
    ClusterRate goodUnjudged,
    ClusterRate notFound,
    double auc,
    double aucWithinRows) {

  /** One graded joint of a found row. */
  private record Looked(
      String photo, RowNote.Grade grade, Verdict verdict, double suspicion, double notHeld) {

    boolean saidGood() {
      return verdict == Verdict.ACCEPTABLE || verdict == Verdict.PROCESS_INDICATOR;
    }
  }

  /** Counts; rows without grades add nothing. */
  public static GradedRows of(List<NoteOutcome> outcomes) {
    List<Looked> all = new ArrayList<>();
    Pairs within = new Pairs();
    ClusterRate.Builder lost = new ClusterRate.Builder();
    for (NoteOutcome outcome : outcomes) {
      List<Looked> row = looked(outcome);
      within.add(row, Looked::suspicion);
      all.addAll(row);
      int graded = counted(outcome);
      lost.add(outcome.note().photo(), graded - row.size(), graded);
    }
    Pairs over = new Pairs();
    over.add(all, Looked::notHeld);
    List<Looked> bad = with(all, RowNote.Grade.BAD);
    List<Looked> good = with(all, RowNote.Grade.GOOD);
    return new GradedRows(
        saidGood(bad),
        said(bad, Verdict.DEFECT),
        said(bad, Verdict.UNJUDGED),
        said(good, Verdict.DEFECT),
        saidGood(good),
        said(good, Verdict.UNJUDGED),
        lost.rate(),
        over.share(),
        within.share());
  }

  private static int counted(NoteOutcome outcome) {
    return (int)
        outcome.note().grades().values().stream()
            .filter(grade -> grade != RowNote.Grade.UNSURE)
            .count();
  }

  private static List<Looked> looked(NoteOutcome outcome) {
    List<Looked> row = new ArrayList<>();
    for (int i = 0; i < outcome.joints().size(); i++) {
      RowNote.Grade grade = outcome.note().grades().getOrDefault(i + 1, RowNote.Grade.UNSURE);
      if (grade != RowNote.Grade.UNSURE) {
        row.add(
            new Looked(
                outcome.note().photo(),
                grade,
                outcome.verdicts().get(i),
                outcome.suspicions().get(i),
                outcome.notHeld().get(i)));
      }
    }
    return row;
  }

  private static List<Looked> with(List<Looked> joints, RowNote.Grade grade) {
    return joints.stream().filter(joint -> joint.grade() == grade).toList();
  }

  private static ClusterRate saidGood(List<Looked> joints) {
    return rate(joints, Looked::saidGood);
  }

  private static ClusterRate said(List<Looked> joints, Verdict verdict) {
    return rate(joints, joint -> joint.verdict() == verdict);
  }

  private static ClusterRate rate(List<Looked> joints, Predicate<Looked> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    joints.forEach(joint -> rate.add(joint.photo(), so.test(joint)));
    return rate.rate();
  }

  /** Whether any joint was graded. */
  public boolean any() {
    return notFound.of() > 0;
  }

  /** Pairs of a bad and a good joint. */
  private static final class Pairs {
    private double right;
    private long of;

    void add(List<Looked> joints, ToDoubleFunction<Looked> by) {
      for (Looked bad : with(joints, RowNote.Grade.BAD)) {
        for (Looked good : with(joints, RowNote.Grade.GOOD)) {
          int order = Double.compare(by.applyAsDouble(bad), by.applyAsDouble(good));
          right += order > 0 ? 1 : order == 0 ? 0.5 : 0;
          of++;
        }
      }
    }

    double share() {
      return right / of;
    }
  }
}
