package leadlight.drill.skill;

import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** What an answer was worth, against the truth. */
public enum Outcome {
  /** A fault that was called one, and named. */
  RIGHT("Right"),
  /** A fault that was called one by another name. */
  MISNAMED("A defect, but another one"),
  /** A fault that was called sound. */
  MISSED("Missed"),
  /** A sound joint that was called sound. */
  PASSED("Right"),
  /** A sound joint that was called a defect. */
  FALSE_ALARM("False alarm"),
  /** A joint that can be judged, and was not. */
  NOT_JUDGED("Not judged"),
  /** A joint too close to a limit: no answer is wrong. */
  NOT_COUNTED("Too close to the limit to count"),
  /** Own work: nobody knows the truth. */
  NO_TRUTH("");

  static final String LIMIT = "limit";
  static final String DEFECT = "defect";

  private final String words;

  Outcome(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** True if the answer was right in verdict and name. */
  public boolean isRight() {
    return this == RIGHT || this == PASSED;
  }

  /** True if it counts towards a person's rates. */
  public boolean counts() {
    return this != NOT_COUNTED && this != NO_TRUTH;
  }

  public static Outcome of(DrillAnswer answer) {
    if (answer.truth().isEmpty()) {
      return NO_TRUTH;
    }
    if (answer.truth().get().equals(LIMIT)) {
      return NOT_COUNTED;
    }
    if (answer.said() == Verdict.UNJUDGED) {
      return NOT_JUDGED;
    }
    boolean faulty = answer.truth().get().equals(DEFECT);
    if (answer.said() == Verdict.DEFECT) {
      return faulty ? named(answer) ? RIGHT : MISNAMED : FALSE_ALARM;
    }
    return faulty ? MISSED : PASSED;
  }

  /** A fault without a key of its own is named right by "something else". */
  private static boolean named(DrillAnswer answer) {
    if (answer.finding().isEmpty()) {
      return answer.truthFindings().stream().noneMatch(Offered.KINDS::contains);
    }
    FindingKind said = answer.finding().get();
    return answer.truthFindings().contains(said);
  }
}
