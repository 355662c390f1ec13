package leadlight.quality.grades;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.model.UserError;
import leadlight.quality.Table;

/** All grades of a study: by grader and item, in the order in which they were first named. */
public final class Grades {

  /** Each grader's grades: item, trial, grade. */
  private final Map<String, Map<String, TreeMap<Integer, Grade>>> byGrader = new LinkedHashMap<>();

  private final Set<String> items = new LinkedHashSet<>();

  /** Takes grades; the same grader may grade an item once a trial. */
  public static Grades of(List<Grade> grades) {
    Grades all = new Grades();
    grades.forEach(all::add);
    return all;
  }

  /**
   * Reads the columns item, grader, verdict and, if there, trial (else 1) and finding.
   *
   * @param reading words that are known; all are if verdicts are compared as given
   * @throws UserError if a cell is missing, a word is not known or a grade is given twice
   */
  public static List<Grade> read(Path file, Reading reading) {
    List<Grade> grades = new ArrayList<>();
    Set<List<Object>> seen = new LinkedHashSet<>();
    for (Table.Row row : Table.read(file, "item", "grader", "verdict").rows()) {
      int trial = row.maybe("trial").isPresent() ? row.count("trial") : 1;
      Grade grade =
          new Grade(
              row.text("item"),
              row.text("grader"),
              trial,
              row.text("verdict"),
              row.maybe("finding"));
      if (!reading.asGiven() && reading.side(grade.verdict()).isEmpty()) {
        throw row.trouble("verdict", reading.unknown(grade.verdict()));
      }
      if (!seen.add(List.of(grade.item(), grade.grader(), trial))) {
        throw row.trouble(
            "%s has graded %s in trial %d before; number the trials or delete one line"
                .formatted(grade.grader(), grade.item(), trial));
      }
      grades.add(grade);
    }
    return grades;
  }

  private void add(Grade grade) {
    items.add(grade.item());
    Grade before =
        byGrader
            .computeIfAbsent(grade.grader(), g -> new LinkedHashMap<>())
            .computeIfAbsent(grade.item(), i -> new TreeMap<>())
            .put(grade.trial(), grade);
    if (before != null) {
      throw new UserError(
          "%s has graded %s twice in trial %d; number the trials"
              .formatted(grade.grader(), grade.item(), grade.trial()));
    }
  }

  /** The graders. */
  public List<String> graders() {
    return List.copyOf(byGrader.keySet());
  }

  /** The items. */
  public List<String> items() {
    return List.copyOf(items);
  }

  /**
   * A grader's grades of an item by trial; empty if there is none.
   *
   * @throws UserError if nobody of that name graded
   */
  public List<Grade> of(String grader, String item) {
    Map<String, TreeMap<Integer, Grade>> mine = byGrader.get(grader);
    if (mine == null) {
      throw new UserError(
          "nobody called \"%s\" graded; there are %s"
              .formatted(grader, String.join(", ", graders())));
    }
    return List.copyOf(mine.getOrDefault(item, new TreeMap<>()).values());
  }

  /** The grade in a trial. */
  public Optional<Grade> of(String grader, String item, int trial) {
    return of(grader, item).stream().filter(g -> g.trial() == trial).findFirst();
  }

  /** What the reference says of an item; empty if it says nothing or contradicts itself. */
  public Optional<Grade> truth(String reference, String item, Reading reading) {
    List<Grade> said = of(reference, item);
    return said.isEmpty() || contradicts(said, reading)
        ? Optional.empty()
        : Optional.of(said.get(0));
  }

  /** Items of which one who should know says good in one trial and bad in another. */
  public List<String> contradicted(String reference, Reading reading) {
    return items().stream().filter(item -> contradicts(of(reference, item), reading)).toList();
  }

  private static boolean contradicts(List<Grade> said, Reading reading) {
    return said.stream().map(reading::category).distinct().count() > 1;
  }

  /** The photo that an item is a joint of, or the item itself. */
  public static String cluster(String item) {
    return item.replaceFirst(" pin \\d+$", "");
  }

  /** The items that a grader has graded in every one of that grader's trials. */
  public List<String> complete(String grader) {
    int trials = trials(grader);
    return items().stream().filter(i -> of(grader, i).size() == trials).toList();
  }

  /** Most repeats of a grader. */
  public int trials(String grader) {
    return items().stream().mapToInt(i -> of(grader, i).size()).max().orElse(0);
  }

  /** Categories in alphabetic order. */
  public List<String> categories() {
    return byGrader.values().stream()
        .flatMap(m -> m.values().stream())
        .flatMap(m -> m.values().stream())
        .map(Grade::verdict)
        .distinct()
        .sorted()
        .toList();
  }
}
