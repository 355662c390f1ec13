package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Estimate;
import leadlight.quality.Words;
import leadlight.quality.gauge.variance.GaugeAnova;
import leadlight.quality.gauge.variance.GaugeRules;
import leadlight.quality.gauge.variance.GaugeStudy;
import leadlight.quality.gauge.variance.Spread;

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

  /** A figure's name with the unit of a measure, if that has one. */
  static String withUnit(String figure, String measure) {
    String unit = unit(measure);
    return unit.isEmpty() ? figure : figure + "," + unit;
  }

  /** A component with its interval. */
  static List<String> sure(String name, Estimate e) {
    return List.of(
        name,
        Words.significant(e.value()),
        Words.significant(e.lower()) + " to " + Words.significant(e.upper()));
  }

  /** What a bias takes from the plain verdict, beginning with a blank; empty if it is chance. */
  static String wrong(String measure, Bias b) {
    String how =
        b.isMoreThanChance()
            ? "is read %s%s too %s on average"
                .formatted(
                    Words.significant(Math.abs(b.mean().value())),
                    unit(measure),
                    b.mean().value() < 0 ? "low" : "high")
            : b.slope()
                .filter(Bias::isBeyondNone)
                .map(e -> "is read wrong by a share of its value")
                .orElse("");
    return how.isEmpty()
        ? ""
        : " But %s %s, which none of this allows for: see to it first.".formatted(measure, how);
  }

  static String bias(Bias b, String unit) {
    String mean =
        "Bias against known values of %s: %s%s (%s to %s), %s."
            .formatted(
                of(b),
                Words.significant(b.mean().value()),
                unit,
                Words.significant(b.mean().lower()),
                Words.significant(b.mean().upper()),
                b.isMoreThanChance()
                    ? "more than chance (" + Words.p(b.p()) + ")"
                    : "no more than chance");
    String slope =
        b.slope()
            .map(
                e ->
                    " Linearity: the bias changes by %s of the value (%s to %s)%s."
                        .formatted(
                            Words.percent(e.value()),
                            Words.fixed(100 * e.lower(), 1),
                            Words.percent(e.upper()),
                            Bias.isBeyondNone(e) ? ", more than chance" : ""))
            .orElse(
                " Linearity needs different values on three parts or boards, whichever is left out.");
    return mean + slope;
  }

  private static String of(Bias b) {
    return b.boards() == b.parts()
        ? b.parts() + " parts"
        : "%d parts on %d boards, counted by board".formatted(b.parts(), b.boards());
  }

  /** What is said of known values that are all of one board or part. */
  static String oneBoard(double bias, String unit) {
    return ("Bias: the known values are of one board or part, read %s%s too %s on average. Joints of"
            + " one board are alike, so it takes two or more to tell that from chance.")
        .formatted(Words.significant(Math.abs(bias)), unit, bias < 0 ? "low" : "high");
  }

  static String drift(Drift d) {
    return "Drift: %s a day (%s to %s), %s."
        .formatted(
            Words.significant(d.perDay().value()),
            Words.significant(d.perDay().lower()),
            Words.significant(d.perDay().upper()),
            d.p() < 0.05 ? "more than chance (" + Words.p(d.p()) + ")" : "no more than chance");
  }
}
