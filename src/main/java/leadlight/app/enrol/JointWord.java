package leadlight.app.enrol;

import java.util.Comparator;
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
 * What the record says of whether solder holds a joint. The bench counts over a person, whenever
 * either spoke.
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
  /**
   * It moves and holds, or was open and conducts, at one time or another: a joint may have been
   * soldered in between, and nobody knows which of both the photo shows.
   */
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

  /**
   * The word on one joint of a photo, which may have been scored more than once.
   *
   * @param joint as each scoring has it
   */
  static JointWord of(List<RecordedJoint> joint) {
    List<BenchResult> bench =
        joint.stream()
            .flatMap(it -> it.bench().stream())
            .sorted(Comparator.comparing(BenchResult::at))
            .toList();
    List<String> said = last(bench);
    Optional<JointWord> eye =
        joint.stream()
            .flatMap(it -> it.overrules().stream())
            .sorted(Comparator.comparing(Overrule::at))
            .reduce((older, newer) -> newer)
            .map(JointWord::byEye);
    boolean firm = ever(bench, "firm");
    if (ever(bench, "moves") || ever(bench, "open")) {
      boolean still = said.contains("moves") || said.contains("open");
      return still && !firm ? UNSOLDERED : CONTRADICTORY;
    }
    if (said.contains("short")) {
      return OTHER_FAULT;
    }
    if (firm) {
      return eye.orElse(SOUND_BY_EYE) == SOUND_BY_EYE ? SOUND : OTHER_FAULT;
    }
    return eye.orElse(said.contains("ok") ? CONDUCTS : NONE);
  }

  /** Also what was said otherwise since: the photo shows but one of both. */
  private static boolean ever(List<BenchResult> bench, String result) {
    return bench.stream().anyMatch(it -> it.otherPin().isEmpty() && it.result().equals(result));
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
