package leadlight.record.said;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;

/**
 * What counts at a joint: the bench over a named person over the tool. A fault that the bench found
 * is a defect, whatever anybody saw. What it ruled out (a lead that holds is not open, a pair
 * without a short is no bridge) is gone, and nothing else: a joint that was called bad for that
 * alone is unjudged until a person has looked at it.
 *
 * @param joint verdict, findings, doubts and grounds that count
 * @param source whose word it is
 */
public record Standing(GradedJoint joint, Source source) {

  /** Whose word counts, the strongest last. */
  public enum Source {
    TOOL("tool"),
    PERSON("person"),
    BENCH("bench");

    private final String id;

    Source(String id) {
      this.id = id;
    }

    /** The name in files. */
    public String id() {
      return id;
    }
  }

  private static final double SURE = 1;

  static Standing of(GradedJoint tool, List<Overrule> opinions, List<BenchResult> bench) {
    Standing said =
        opinions.isEmpty()
            ? new Standing(tool, Source.TOOL)
            : new Standing(by(opinions.get(opinions.size() - 1), tool), Source.PERSON);
    List<BenchResult> last = last(bench);
    List<Finding> faults = last.stream().flatMap(r -> fault(r, tool.pin()).stream()).toList();
    if (!faults.isEmpty()) {
      return new Standing(faulty(said.joint, faults), Source.BENCH);
    }
    Map<Ruled, BenchResult> ruled = ruledOut(last);
    return ruled.isEmpty() ? said : said.without(ruled);
  }

  private static GradedJoint by(Overrule opinion, GradedJoint tool) {
    Note said = new NoteOfJoint.PersonSaid(opinion.person(), opinion.reason());
    List<Finding> findings =
        opinion.finding().stream()
            .map(kind -> finding(kind, List.of(tool.pin()), opinion.verdict(), said))
            .toList();
    return new GradedJoint(
        tool.joint(), opinion.verdict(), findings, tool.checks(), List.of(), List.of(said));
  }

  /** The last result of each question: does it move, is it joined, is there a short to a pin. */
  private static List<BenchResult> last(List<BenchResult> bench) {
    Map<String, BenchResult> last = new LinkedHashMap<>();
    bench.forEach(result -> last.put(result.test().id() + result.otherPin(), result));
    return List.copyOf(last.values());
  }

  private static Optional<Finding> fault(BenchResult result, int pin) {
    int other = result.otherPin().orElse(0);
    return switch (result.result()) {
      case "moves" ->
          Optional.of(
              finding(
                  FindingKind.OPEN,
                  List.of(pin),
                  Verdict.DEFECT,
                  new NoteOfJoint.ProdMoved(result.person())));
      case "open" ->
          Optional.of(
              finding(
                  FindingKind.OPEN,
                  List.of(pin),
                  Verdict.DEFECT,
                  new NoteOfJoint.MeterOpen(result.person())));
      case "short" ->
          Optional.of(
              finding(
                  FindingKind.BRIDGE,
                  other > 0 ? List.of(pin, other) : List.of(pin),
                  Verdict.DEFECT,
                  new NoteOfJoint.MeterShort(other, result.person())));
      default -> Optional.empty();
    };
  }

  private static Finding finding(FindingKind kind, List<Integer> pins, Verdict verdict, Note said) {
    return new Finding(
        kind, pins, verdict, SURE, OptionalDouble.empty(), Optional.of(said), List.of(), "", "");
  }

  private static GradedJoint faulty(GradedJoint said, List<Finding> faults) {
    boolean open = faults.stream().anyMatch(f -> f.kind() == FindingKind.OPEN);
    List<Finding> findings = new ArrayList<>(faults);
    said.findings().stream()
        .filter(f -> !(open && ofWetting(f.kind())))
        .filter(f -> faults.stream().noneMatch(fault -> isSame(fault, f)))
        .forEach(findings::add);
    return new GradedJoint(
        said.joint(), Verdict.DEFECT, findings, said.checks(), List.of(), List.of());
  }

  private static boolean ofWetting(FindingKind kind) {
    return kind == FindingKind.OPEN || kind == FindingKind.INSUFFICIENT;
  }

  private static boolean isSame(Finding one, Finding other) {
    return one.kind() == other.kind() && one.pins().equals(other.pins());
  }

  /** A fault that is not there; the other pin of a bridge, else 0. */
  private record Ruled(FindingKind kind, int otherPin) {

    boolean is(Finding finding) {
      return finding.kind() == kind && (otherPin == 0 || finding.pins().contains(otherPin));
    }

    boolean isDoubted(Doubt doubt) {
      if (doubt instanceof Doubt.Possible possible) {
        return possible.kind() == kind && possible.neighbourPin() == otherPin;
      }
      return doubt instanceof Doubt.ToSettle settle && settle.kind() == kind && otherPin == 0;
    }
  }

  private static Map<Ruled, BenchResult> ruledOut(List<BenchResult> last) {
    Map<Ruled, BenchResult> ruled = new LinkedHashMap<>();
    for (BenchResult result : last) {
      int other = result.otherPin().orElse(0);
      if (result.result().equals("firm") || (result.result().equals("ok") && other == 0)) {
        ruled.put(new Ruled(FindingKind.OPEN, 0), result);
      } else if (result.result().equals("ok")) {
        ruled.put(new Ruled(FindingKind.BRIDGE, other), result);
      }
    }
    return ruled;
  }

  private Standing without(Map<Ruled, BenchResult> ruled) {
    List<Finding> findings = new ArrayList<>(joint.findings());
    findings.removeIf(f -> ruled.keySet().stream().anyMatch(r -> r.is(f)));
    Set<Doubt> doubts = new LinkedHashSet<>(joint.doubts());
    doubts.removeIf(d -> ruled.keySet().stream().anyMatch(r -> r.isDoubted(d)));
    boolean changed =
        findings.size() < joint.findings().size() || doubts.size() < joint.doubts().size();
    Verdict verdict = verdict(findings);
    if (verdict == Verdict.UNJUDGED && (doubts.isEmpty() || changed)) {
      ruled.forEach((r, result) -> doubts.add(new Doubt.RuledOut(r.kind(), result.person())));
    }
    List<Note> grounds = new ArrayList<>(joint.grounds());
    if (verdict.compareTo(Verdict.UNJUDGED) < 0) {
      ruled.keySet().stream()
          .filter(r -> r.kind() == FindingKind.OPEN)
          .forEach(r -> grounds.add(held(ruled.get(r))));
    }
    return new Standing(
        new GradedJoint(
            joint.joint(),
            verdict,
            findings,
            joint.checks(),
            verdict == Verdict.UNJUDGED ? List.copyOf(doubts) : List.of(),
            grounds),
        changed ? Source.BENCH : source);
  }

  /** A defect of which every named fault is ruled out is one no more, and not yet sound. */
  private Verdict verdict(List<Finding> left) {
    boolean lostAll =
        joint.verdict() == Verdict.DEFECT
            && joint.findings().stream().anyMatch(f -> f.verdict() == Verdict.DEFECT)
            && left.stream().noneMatch(f -> f.verdict() == Verdict.DEFECT);
    return lostAll ? Verdict.UNJUDGED : joint.verdict();
  }

  private static Note held(BenchResult result) {
    return result.test() == BenchTest.PROD
        ? new NoteOfJoint.ProdHeld(result.person())
        : new NoteOfJoint.MeterOk(0, result.person());
  }
}
