package leadlight.drill;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadlight.model.FindingKind;
import leadlight.record.DrillAnswer;

/**
 * The schedule: compartments after Leitner 1972 ({@code models/drill/drill.json} has the source).
 * What lies in a compartment is a finding, not a picture, so that no picture is learnt by heart. A
 * joint with the finding that is called a defect and named right moves it one compartment on; any
 * other answer moves it back to the first. A compartment comes up half as often as the one before.
 */
public final class Boxes {

  private final int last = DrillRules.builtIn().boxes().count();
  private final Map<FindingKind, Integer> boxes = new EnumMap<>(FindingKind.class);

  /** Nothing was answered yet: every finding is in the first compartment. */
  public Boxes() {}

  /** Where findings are after these answers, in their order. */
  public static Boxes after(List<DrillAnswer> answers) {
    Boxes boxes = new Boxes();
    answers.forEach(boxes::take);
    return boxes;
  }

  private void take(DrillAnswer answer) {
    boolean faulty = answer.truth().filter(Outcome.DEFECT::equals).isPresent();
    if (faulty && !answer.truthFindings().isEmpty()) {
      FindingKind finding = answer.truthFindings().get(0);
      boolean right = Outcome.of(answer) == Outcome.RIGHT;
      boxes.put(finding, right ? Math.min(last, box(finding) + 1) : 1);
    }
  }

  /** Compartment of a finding, from 1. */
  public int box(FindingKind finding) {
    return boxes.getOrDefault(finding, 1);
  }

  /** How often it comes up, against a finding in the first compartment. */
  double weight(FindingKind finding) {
    return Math.pow(0.5, box(finding) - 1.0);
  }
}
