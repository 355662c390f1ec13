package leadlight.quality;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Grades of two graders, or of all, brought together. */
final class Pairing {

  private Pairing() {}

  /**
   * Counts of two graders, trial against trial; a reference has one trial that stands for all.
   * Items that one of them has not graded, or that the reference leaves open, are left out.
   */
  static CrossTable table(
      Grades grades, Reading reading, String one, String other, boolean otherIsReference) {
    List<String> categories = reading.categories(grades);
    int[][] counts = new int[categories.size()][categories.size()];
    for (String item : grades.items()) {
      for (Grade grade : grades.of(one, item)) {
        int trial = otherIsReference ? 1 : grade.trial();
        Optional<Grade> against =
            grades
                .of(other, item, trial)
                .filter(g -> !otherIsReference || !reading.side(g).equals(Reading.OPEN));
        against.ifPresent(
            g ->
                counts[categories.indexOf(reading.category(grade))][
                    categories.indexOf(reading.category(g))]++);
      }
    }
    List<List<Integer>> rows = new ArrayList<>();
    for (int[] row : counts) {
      rows.add(Arrays.stream(row).boxed().toList());
    }
    return new CrossTable(categories, rows);
  }

  /** Grades in each category of every item that all graders have graded in all their trials. */
  static List<List<Integer>> counts(Grades grades, Reading reading, List<String> graders) {
    List<String> categories = reading.categories(grades);
    List<List<Integer>> counts = new ArrayList<>();
    for (String item : grades.items()) {
      if (graders.stream().allMatch(g -> grades.of(g, item).size() == grades.trials(g))) {
        List<String> said =
            graders.stream()
                .flatMap(g -> grades.of(g, item).stream())
                .map(reading::category)
                .toList();
        counts.add(
            categories.stream().map(c -> (int) said.stream().filter(c::equals).count()).toList());
      }
    }
    return counts;
  }
}
