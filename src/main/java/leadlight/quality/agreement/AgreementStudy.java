package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadlight.model.UserError;
import leadlight.quality.Words;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;

/**
 * An agreement study of graders, with or without a reference.
 *
 * @param grades all grades
 * @param reading how verdicts are read
 * @param reference name of the reference among the graders, if there is one
 */
public record AgreementStudy(Grades grades, Reading reading, Optional<String> reference) {

  /**
   * Two graders against each other.
   *
   * @param calls what both called the same items
   */
  public record Pair(String one, String other, PairCalls calls) {

    /** Trials pooled. */
    public CrossTable table() {
      return calls.table();
    }
  }

  /**
   * An item on which graders differ.
   *
   * @param item which
   * @param dissent grades that differ from the majority (or from the reference), of all
   * @param said what each said
   */
  public record Divided(String item, Rate dissent, Map<String, String> said) {}

  /**
   * Checks that there is something to compare.
   *
   * @throws UserError if the reference is unknown or a single grader has neither reference nor
   *     repeats
   */
  public AgreementStudy {
    for (String name : reference.stream().toList()) {
      if (!grades.graders().contains(name)) {
        throw new UserError(
            "the reference \"%s\" is no grader here; there are %s"
                .formatted(name, String.join(", ", grades.graders())));
      }
    }
    if (grades.graders().size() == 1 && grades.trials(grades.graders().get(0)) < 2) {
      throw new UserError("one grader, one trial: nothing to compare; add a grader or a repeat");
    }
  }

  /** Those who grade, without the reference. */
  public List<String> appraisers() {
    return grades.graders().stream().filter(g -> !reference.equals(Optional.of(g))).toList();
  }

  /** Each grader against the reference; empty without one. */
  public List<Appraisal> appraisals() {
    return reference.stream()
        .flatMap(r -> appraisers().stream().map(g -> Appraisal.of(grades, reading, g, r)))
        .toList();
  }

  /** Agreement of a grader with itself; empty with one trial. */
  public Optional<ClusterRate> repeated(String grader) {
    return Repeats.of(grades, reading, grader);
  }

  /** Each grader against each other one. */
  public List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    List<String> names = appraisers();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        String one = names.get(i);
        String other = names.get(j);
        pairs.add(new Pair(one, other, Pairing.pair(grades, reading, one, other, false)));
      }
    }
    return pairs;
  }

  /** A grader against the reference, as counts. */
  public Optional<CrossTable> againstReference(String grader) {
    return reference.map(r -> Pairing.pair(grades, reading, grader, r, true).table());
  }

  /** All graders and trials together; empty if no item has two grades. */
  public Optional<Calls> together() {
    List<Calls.Item> calls = Pairing.calls(grades, reading, appraisers());
    boolean enough =
        !calls.isEmpty() && calls.get(0).counts().stream().mapToInt(Integer::intValue).sum() > 1;
    return enough ? Optional.of(new Calls(calls)) : Optional.empty();
  }

  /** Items graded by all of them in all their trials. */
  public int complete() {
    return Pairing.calls(grades, reading, appraisers()).size();
  }

  /**
   * System effectiveness (AIAG MSA, 4th edition): items on which all graders in all their trials
   * say what the reference says, or, without one, all the same.
   */
  public ClusterRate system() {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    for (String item : grades.items()) {
      List<Grade> said = appraisers().stream().flatMap(g -> grades.of(g, item).stream()).toList();
      boolean all =
          appraisers().stream().allMatch(g -> grades.of(g, item).size() == grades.trials(g));
      Optional<Grade> truth = truth(item);
      if (all && (reference.isEmpty() || truth.isPresent())) {
        Set<String> sides = said.stream().map(reading::category).collect(Collectors.toSet());
        truth.ifPresent(g -> sides.add(reading.category(g)));
        rate.add(Grades.cluster(item), sides.size() == 1);
      }
    }
    return rate.rate();
  }

  /** What the reference says; empty if it leaves the item open or contradicts itself. */
  private Optional<Grade> truth(String item) {
    return reference
        .flatMap(r -> grades.truth(r, item, reading))
        .filter(g -> !reading.side(g).equals(Reading.OPEN));
  }

  /** What does not count and why, a sentence each. */
  public List<String> dropped() {
    List<String> dropped = new ArrayList<>();
    for (String r : reference.stream().toList()) {
      List<String> contradicted = grades.contradicted(r, reading);
      if (!contradicted.isEmpty()) {
        dropped.add(
            "%s contradicts itself on %s, left out: %s."
                .formatted(r, Words.count(contradicted.size(), "item"), Words.named(contradicted)));
      }
      long none = grades.items().stream().filter(i -> grades.of(r, i).isEmpty()).count();
      long open = grades.items().size() - none - contradicted.size();
      open -= grades.items().stream().filter(i -> truth(i).isPresent()).count();
      if (none + open > 0) {
        dropped.add(
            "Not held against %s: %d items that it did not grade, %d that it leaves open."
                .formatted(r, none, open));
      }
    }
    for (String grader : appraisers()) {
      long part =
          grades.items().stream()
              .filter(i -> grades.of(grader, i).size() < grades.trials(grader))
              .count();
      if (part > 0) {
        dropped.add(
            "%s did not grade %d of %d items in every trial; these are left out of its own rates."
                .formatted(grader, part, grades.items().size()));
      }
    }
    return dropped;
  }

  /** What each finding of the reference was called by a grader: finding, call, count. */
  public Map<String, Map<String, Integer>> confusion(String grader) {
    Map<String, Map<String, Integer>> confusion = new TreeMap<>();
    for (String item : grades.items()) {
      Optional<Grade> truth = reference.flatMap(r -> grades.truth(r, item, reading));
      for (Grade grade : truth.isEmpty() ? List.<Grade>of() : grades.of(grader, item)) {
        confusion
            .computeIfAbsent(call(truth.get()), f -> new TreeMap<>())
            .merge(call(grade), 1, Integer::sum);
      }
    }
    return confusion;
  }

  private static String call(Grade grade) {
    return grade.finding().map(f -> f.replace("; ", " + ")).orElse(grade.verdict());
  }

  /** Items that divide the graders, the most divided first, then in their order. */
  public List<Divided> divided() {
    List<Divided> divided = new ArrayList<>();
    for (String item : grades.items()) {
      Divided one = divided(item);
      if (one.dissent().count() > 0) {
        divided.add(one);
      }
    }
    divided.sort(Comparator.comparingDouble((Divided d) -> -d.dissent().share()));
    return divided;
  }

  private Divided divided(String item) {
    Map<String, String> said = new LinkedHashMap<>();
    List<String> sides = new ArrayList<>();
    for (String grader : appraisers()) {
      List<Grade> mine = grades.of(grader, item);
      mine.forEach(g -> sides.add(reading.category(g)));
      said.put(grader, String.join(" ", mine.stream().map(AgreementStudy::call).toList()));
    }
    Optional<Grade> truth = truth(item);
    truth.ifPresent(g -> said.put(g.grader(), call(g)));
    int alike = truth.isPresent() ? count(sides, reading.category(truth.get())) : majority(sides);
    return new Divided(item, new Rate(sides.size() - alike, sides.size()), said);
  }

  private static int majority(List<String> sides) {
    return sides.stream().mapToInt(s -> count(sides, s)).max().orElse(0);
  }

  private static int count(List<String> sides, String side) {
    return (int) sides.stream().filter(side::equals).count();
  }
}
