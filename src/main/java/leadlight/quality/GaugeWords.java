package leadlight.quality;

import java.util.ArrayList;
import java.util.List;

/** What a gauge study says, as words and lines of tables. */
public final class GaugeWords {

  private GaugeWords() {}

  static List<String> line(String name, Spread s, GaugeRules rules) {
    List<String> cells = new ArrayList<>(List.of(name));
    cells.add(Words.significant(s.equipment()));
    cells.add(Words.significant(s.operators()));
    cells.add(Words.significant(s.gauge()));
    cells.add(Words.significant(s.parts()));
    cells.add(s.gaugeShare().map(Words::percent).orElse("nothing varies"));
    cells.add(s.categories().map(c -> "" + c).orElse("no limit"));
    cells.add(s.gaugeShare().map(rules::verdict).orElse(""));
    return cells;
  }

  static List<List<String>> methods(GaugeStudy study) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(method("variance analysis", study.anova().spread()));
    study.averageRange().ifPresent(s -> rows.add(method("average and range", s)));
    return rows;
  }

  static List<String> method(String name, Spread s) {
    return List.of(
        name,
        Words.significant(s.equipment()),
        Words.significant(s.operators()),
        Words.significant(s.gauge()),
        Words.significant(s.parts()),
        Words.significant(s.total()),
        s.gaugeShare().map(Words::percent).orElse("nothing varies"),
        s.categories().map(c -> "" + c).orElse("no limit"));
  }

  static String interaction(GaugeAnova anova, GaugeRules rules) {
    String p =
        anova
            .interactionP()
            .map(Words::p)
            .orElse("repeats are alike to the last digit, so it cannot be tested");
    return "Interaction of part and operator: %s; %s."
        .formatted(
            p,
            anova.pooled()
                ? "pooled with the repeats (p above " + rules.poolAboveP() + ")"
                : "kept: some parts read differently under some operators");
  }

  /** The unit that ends a measure's name, as in "side_overhang_mm". */
  public static String unit(String measure) {
    int at = measure.lastIndexOf('_');
    return at < 0 ? "" : " " + measure.substring(at + 1);
  }
}
