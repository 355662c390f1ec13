package leadlight.drill.skill;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadlight.model.FindingKind;
import leadlight.record.DrillAnswer;

/**
 * The schedule: steps after Leitner 1972 ({@code models/drill/drill.json} has the source). What
 * lies in a step is a finding, not a picture, so that no picture is learnt by heart. A joint with
 * the finding that is called a defect and named right moves it one step on; any other answer moves
 * it back to the first. A step comes up half as often as the one before.
 */
public final class DueAgain {

  private final int last = DrillRules.builtIn().due().count();
  private final Map<FindingKind, Integer> due = new EnumMap<>(FindingKind.class);

  /** Nothing was answered yet: every finding is in the first step. */
  public DueAgain() {}

  /** Where findings are after these answers, in their order. */
  public static DueAgain after(List<DrillAnswer> answers) {
    DueAgain due = new DueAgain();
    answers.forEach(due::take);
    return due;
  }

  private void take(DrillAnswer answer) {
    boolean faulty = answer.truth().filter(Outcome.DEFECT::equals).isPresent();
    if (faulty && !answer.truthFindings().isEmpty()) {
      FindingKind finding = answer.truthFindings().get(0);
      boolean right = Outcome.of(answer) == Outcome.RIGHT;
      due.put(finding, right ? Math.min(last, step(finding) + 1) : 1);
    }
  }

  /** Compartment of a finding, from 1. */
  int step(FindingKind finding) {
    return due.getOrDefault(finding, 1);
  }

  /** How often it comes up, against a finding in the first step. */
  public double weight(FindingKind finding) {
    return Math.pow(0.5, step(finding) - 1.0);
  }
}
