package leadlight.cli.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.said.BenchResult;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;

/**
 * What the record says of whether solder holds a joint. The bench counts over a person; of each
 * test its last word counts.
 */
enum JointWord {
  /** A prod moved it, or a meter found it open. */
  UNSOLDERED(Optional.of(false)),
  /** It was prodded, and holds. */
  SOUND(Optional.of(true)),
  /** A person saw it open. */
  UNSOLDERED_BY_EYE(Optional.of(false)),
  /** A person says it is sound; nobody prodded it. */
  SOUND_BY_EYE(Optional.of(true)),
  /** A meter says that it conducts, as a lead that only rests does: no proof. */
  CONDUCTS(Optional.empty()),
  /** A short, or a fault of another kind: says nothing of whether solder holds it. */
  OTHER_FAULT(Optional.empty()),
  /** It moves, and holds: the words contradict each other. */
  CONTRADICTORY(Optional.empty()),
  /** Never prodded, metered or judged by a person: no proof. */
  NONE(Optional.empty());

  private final Optional<Boolean> soldered;

  JointWord(Optional<Boolean> soldered) {
    this.soldered = soldered;
  }

  /** Whether solder holds it, where the word tells. */
  Optional<Boolean> soldered() {
    return soldered;
  }

  static JointWord of(RecordedJoint joint) {
    List<String> said = last(joint.bench());
    Optional<JointWord> eye =
        joint.overrules().stream().reduce((older, newer) -> newer).map(JointWord::byEye);
    boolean open = said.contains("moves") || said.contains("open");
    boolean firm = said.contains("firm");
    if (open) {
      return firm ? CONTRADICTORY : UNSOLDERED;
    }
    if (said.contains("short")) {
      return OTHER_FAULT;
    }
    if (firm) {
      return eye.orElse(SOUND_BY_EYE) == SOUND_BY_EYE ? SOUND : OTHER_FAULT;
    }
    return eye.orElse(said.contains("ok") ? CONDUCTS : NONE);
  }

  /** The last word of each test; of a pair it counts only where there is a short. */
  private static List<String> last(List<BenchResult> bench) {
    Map<String, String> last = new LinkedHashMap<>();
    for (BenchResult it : bench) {
      boolean apart = it.otherPin().isPresent() && !it.result().equals("short");
      last.put(it.test().id() + it.otherPin(), apart ? "" : it.result());
    }
    return List.copyOf(last.values());
  }

  private static JointWord byEye(Overrule said) {
    if (said.verdict() != Verdict.DEFECT) {
      return SOUND_BY_EYE;
    }
    return said.finding().equals(Optional.of(FindingKind.OPEN)) ? UNSOLDERED_BY_EYE : OTHER_FAULT;
  }
}
