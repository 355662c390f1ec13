package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;

/** Grades of two graders, or of all, brought together. */
final class Pairing {

  private Pairing() {}

  /**
   * Two graders, trial against trial; a reference stands for all trials. Items that one of them has
   * not graded, or that the reference leaves open or contradicts itself on, are left out.
   */
  static PairCalls pair(
      Grades grades, Reading reading, String one, String other, boolean otherIsReference) {
    Function<Grade, Optional<Grade>> against =
        grade ->
            otherIsReference
                ? grades
                    .truth(other, grade.item(), reading)
                    .filter(g -> !reading.side(g).equals(Reading.OPEN))
                : grades.of(other, grade.item(), grade.trial());
    return pair(grades, one, reading.categories(grades), reading::category, against);
  }

  /** Two graders in an order of verdicts; what is none of them is left out. */
  static PairCalls ordered(Grades grades, String one, String other, List<String> verdicts) {
    return pair(
        grades,
        one,
        verdicts,
        Grade::verdict,
        grade -> grades.of(other, grade.item(), grade.trial()));
  }

  private static PairCalls pair(
      Grades grades,
      String one,
      List<String> categories,
      Function<Grade, String> category,
      Function<Grade, Optional<Grade>> against) {
    List<PairCalls.Item> items = new ArrayList<>();
    for (String item : grades.items()) {
      double[] counts = new double[categories.size() * categories.size()];
      boolean any = false;
      for (Grade grade : grades.of(one, item)) {
        Optional<Grade> other = against.apply(grade);
        int first = categories.indexOf(category.apply(grade));
        int second = other.map(o -> categories.indexOf(category.apply(o))).orElse(-1);
        if (first >= 0 && second >= 0) {
          counts[categories.size() * first + second]++;
          any = true;
        }
      }
      if (any) {
        items.add(new PairCalls.Item(Grades.cluster(item), counts));
      }
    }
    return new PairCalls(categories, items);
  }

  /** Grades in each category of every item that all graders have graded in all their trials. */
  static List<Calls.Item> calls(Grades grades, Reading reading, List<String> graders) {
    List<String> categories = reading.categories(grades);
    List<Calls.Item> calls = new ArrayList<>();
    for (String item : grades.items()) {
      if (graders.stream().allMatch(g -> grades.of(g, item).size() == grades.trials(g))) {
        List<String> said =
            graders.stream()
                .flatMap(g -> grades.of(g, item).stream())
                .map(reading::category)
                .toList();
        calls.add(
            new Calls.Item(
                Grades.cluster(item),
                categories.stream()
                    .map(c -> (int) said.stream().filter(c::equals).count())
                    .toList()));
      }
    }
    return calls;
  }
}
