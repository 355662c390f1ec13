package leadlight.drill.skill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import leadlight.model.FindingKind;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.Sitting;
import leadlight.statistics.ClusterRate;

/**
 * What one person has shown, sitting by sitting. Only closed specimens count.
 *
 * @param person the name that the trainee chose
 * @param drills sets with truth, oldest first
 * @param own rows of their own, oldest first
 */
public record History(String person, List<Sat> drills, List<Sat> own) {

  /**
   * A sitting with its answers.
   *
   * @param sitting which
   * @param answers to its closed specimens, by specimen and pin
   */
  public record Sat(Sitting sitting, List<DrillAnswer> answers) {

    /** Copies the list. */
    public Sat {
      answers = List.copyOf(answers);
    }
  }

  /**
   * How well faults of a kind are found.
   *
   * @param missed called sound, of those that were judged
   * @param notRight missed, not judged or called by another name, of all
   * @param step where the schedule has it
   */
  public record ByFinding(
      FindingKind finding, ClusterRate missed, ClusterRate notRight, int step) {}

  /** Copies the lists. */
  public History {
    drills = List.copyOf(drills);
    own = List.copyOf(own);
  }

  /** What the record has of a person; empty lists if nothing. */
  public static History of(DrillRecord record, String person) {
    List<Sat> drills = new ArrayList<>();
    List<Sat> own = new ArrayList<>();
    for (Sitting sitting : record.sittings(person)) {
      Set<Integer> closed = record.told(sitting.id());
      List<DrillAnswer> answers =
          record.answers(sitting.id()).stream().filter(a -> closed.contains(a.specimen())).toList();
      if (!answers.isEmpty()) {
        (sitting.set().ownWork() ? own : drills).add(new Sat(sitting, answers));
      }
    }
    return new History(person, drills, own);
  }

  /** The answers of all drills in their order. */
  public List<DrillAnswer> answers() {
    return drills.stream().flatMap(sat -> sat.answers().stream()).toList();
  }

  /** The figures of all drills; empty without any. */
  public Optional<Figures> figures() {
    return Figures.of(answers());
  }

  /** How many sittings {@link #recent} rests on. */
  public int recentSittings() {
    return Math.min(DrillRules.builtIn().recentSittings().value(), drills.size());
  }

  /** The figures of the last drills; empty without any. */
  public Optional<Figures> recent() {
    return Figures.of(
        drills.subList(drills.size() - recentSittings(), drills.size()).stream()
            .flatMap(sat -> sat.answers().stream())
            .toList());
  }

  /** Where the schedule has each finding. */
  public DueAgain due() {
    return DueAgain.after(answers());
  }

  /** Joints that the person has judged, as they are called in pools. */
  public Set<String> seen() {
    Set<String> seen = new HashSet<>();
    answers().forEach(answer -> seen.add(answer.item()));
    return seen;
  }

  /** Each kind of fault that was shown, the worst first. */
  public List<ByFinding> findings() {
    return findings(answers(), due());
  }

  /** Each kind of fault among answers, the worst first: by the share that was not right. */
  public static List<ByFinding> findings(List<DrillAnswer> answers, DueAgain due) {
    Map<FindingKind, List<DrillAnswer>> faulty = new EnumMap<>(FindingKind.class);
    for (DrillAnswer answer : answers) {
      boolean defect = answer.truth().filter(Outcome.DEFECT::equals).isPresent();
      if (defect && !answer.truthFindings().isEmpty()) {
        faulty.computeIfAbsent(answer.truthFindings().get(0), f -> new ArrayList<>()).add(answer);
      }
    }
    List<ByFinding> findings = new ArrayList<>();
    faulty.forEach(
        (finding, of) ->
            findings.add(
                new ByFinding(
                    finding,
                    rate(of, o -> o != Outcome.NOT_JUDGED, o -> o == Outcome.MISSED),
                    rate(of, o -> true, o -> o != Outcome.RIGHT),
                    due.step(finding))));
    findings.sort(Comparator.comparingDouble((ByFinding f) -> -f.notRight().share()));
    return findings;
  }

  /** By photo, since joints of one photo are alike. */
  private static ClusterRate rate(
      List<DrillAnswer> answers, Predicate<Outcome> of, Predicate<Outcome> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    for (DrillAnswer answer : answers) {
      Outcome outcome = Outcome.of(answer);
      if (of.test(outcome)) {
        rate.add(Figures.photo(answer), so.test(outcome));
      }
    }
    return rate.rate();
  }

  /** How often each side was taken beside the tool, over all rows of their own. */
  public Map<BesideTool, Integer> besideTool() {
    Map<BesideTool, Integer> counts = new EnumMap<>(BesideTool.class);
    own.stream()
        .flatMap(sat -> sat.answers().stream())
        .forEach(answer -> counts.merge(BesideTool.of(answer), 1, Integer::sum));
    return counts;
  }
}
