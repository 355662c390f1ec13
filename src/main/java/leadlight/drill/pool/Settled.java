package leadlight.drill.pool;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.text.Messages;
import leadlight.trial.truth.TrueClass;

/**
 * The truth of a joint by what the record says of it. The last result of each bench test counts. A
 * fault that the bench shows is one. A joint that the bench finds sound is sound unless somebody
 * sees a defect of another kind. Without a bench result, at least two (people by their last
 * opinion, and the tool) must agree, and nobody who spoke may differ.
 */
final class Settled {

  private final RecordedJoint joint;
  private final Messages words;

  private Settled(RecordedJoint joint, Messages words) {
    this.joint = joint;
    this.words = words;
  }

  /** The truth; empty if it is not settled. */
  static Optional<Known> of(RecordedJoint joint, Messages words) {
    Settled settled = new Settled(joint, words);
    Map<BenchTest, BenchResult> bench = new LinkedHashMap<>();
    joint.bench().forEach(result -> bench.put(result.test(), result));
    return bench.isEmpty() ? settled.byPeople() : settled.byBench(List.copyOf(bench.values()));
  }

  private Optional<Known> byBench(List<BenchResult> results) {
    List<FindingKind> faults = results.stream().flatMap(Settled::fault).distinct().toList();
    String how =
        words.get("drill.how.bench", String.join(", ", results.stream().map(this::said).toList()));
    if (!faults.isEmpty()) {
      boolean mixed = results.stream().anyMatch(r -> fault(r).findAny().isEmpty());
      OptionalInt other =
          results.stream()
              .filter(r -> r.otherPin().isPresent())
              .mapToInt(r -> r.otherPin().getAsInt())
              .findFirst();
      return mixed
          ? Optional.empty()
          : Optional.of(new Known(TrueClass.DEFECT, faults, other, how));
    }
    boolean otherwise =
        opinions().containsValue(Verdict.DEFECT)
            || (opinions().isEmpty() && joint.tool().verdict() == Verdict.DEFECT);
    return otherwise
        ? Optional.empty()
        : Optional.of(new Known(TrueClass.ACCEPTABLE, List.of(), OptionalInt.empty(), how));
  }

  private String said(BenchResult result) {
    return words.get("bench." + result.test().id() + "." + result.result());
  }

  private static Stream<FindingKind> fault(BenchResult result) {
    return switch (result.result()) {
      case "moves", "open" -> Stream.of(FindingKind.OPEN);
      case "short" -> Stream.of(FindingKind.BRIDGE);
      default -> Stream.empty();
    };
  }

  private Map<String, Verdict> opinions() {
    Map<String, Verdict> last = new LinkedHashMap<>();
    joint.overrules().forEach(o -> last.put(o.person(), side(o.verdict())));
    return last;
  }

  private Optional<Known> byPeople() {
    Map<String, Verdict> people = opinions();
    if (people.isEmpty() || people.values().stream().distinct().count() > 1) {
      return Optional.empty();
    }
    Verdict agreed = people.values().iterator().next();
    boolean withTool = side(joint.tool().verdict()) == agreed;
    if (people.size() + (withTool ? 1 : 0) < 2) {
      return Optional.empty();
    }
    String how = words.counted("drill.how.people", people.size());
    return Optional.of(
        new Known(
            agreed == Verdict.DEFECT ? TrueClass.DEFECT : TrueClass.ACCEPTABLE,
            agreed == Verdict.DEFECT ? findings() : List.of(),
            OptionalInt.empty(),
            withTool ? words.get("drill.how.and-tool", how) : how));
  }

  /** What people named; what the tool saw, if nobody did. */
  private List<FindingKind> findings() {
    List<FindingKind> named =
        joint.overrules().stream()
            .map(Overrule::finding)
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    return named.isEmpty()
        ? joint.tool().findings().stream().map(Finding::kind).distinct().toList()
        : named;
  }

  private static Verdict side(Verdict verdict) {
    return verdict == Verdict.PROCESS_INDICATOR ? Verdict.ACCEPTABLE : verdict;
  }
}
