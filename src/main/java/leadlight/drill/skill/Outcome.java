package leadlight.drill.skill;

import java.util.Locale;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** What an answer was worth, against the truth. */
public enum Outcome {
  /** A fault that was called one, and named. */
  RIGHT,
  /** A fault that was called one by another name. */
  MISNAMED,
  /** A fault that was called sound. */
  MISSED,
  /** A sound joint that was called sound. */
  PASSED,
  /** A sound joint that was called a defect. */
  FALSE_ALARM,
  /** A joint that can be judged, and was not. */
  NOT_JUDGED,
  /** A joint too close to a limit: no answer is wrong. */
  NOT_COUNTED,
  /** Own work: nobody knows the truth. */
  NO_TRUTH;

  static final String LIMIT = "limit";
  static final String DEFECT = "defect";

  /** Its name in files and as key of its words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
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
