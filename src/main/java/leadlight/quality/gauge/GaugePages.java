package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.quality.Page;
import leadlight.quality.Words;
import leadlight.quality.gauge.variance.Cells;
import leadlight.quality.gauge.variance.GaugeData;
import leadlight.quality.gauge.variance.GaugeRules;
import leadlight.quality.gauge.variance.GaugeStudy;
import leadlight.quality.gauge.variance.Reml;
import leadlight.quality.gauge.variance.Spread;
import leadlight.quality.gauge.variance.Sureness;
import leadlight.statistics.Rate;

/** The page of a gauge study. */
public final class GaugePages {

  private static final List<String> METHOD =
      List.of(
          "method",
          "repeat",
          "reproduce",
          "gauge",
          "parts",
          "total",
          "gauge of total",
          "categories");

  private final GaugeInput input;
  private final GaugeDecisions decisions;
  private final String operatorWord;
  private final List<ClassLimit> limits;
  private final GaugeRules rules = GaugeRules.builtIn();
  private final Page.Builder page = new Page.Builder();
  private final Page.Builder details = new Page.Builder();
  private final List<List<String>> summary = new ArrayList<>();

  private GaugePages(GaugeInput input, List<ClassLimit> limits, Flips flips, String operatorWord) {
    this.input = input;
    this.limits = limits;
    this.decisions = new GaugeDecisions(flips, rules, details);
    this.operatorWord = operatorWord;
  }

  /**
   * The page.
   *
   * @param open verdicts that decide nothing
   * @param operatorWord what "operator" stands for in this study, as "lamp"
   */
  public static Page page(
      GaugeInput input, List<ClassLimit> limits, Set<String> open, String operatorWord) {
    Flips flips = Flips.of(input.verdicts(), open);
    GaugePages pages = new GaugePages(input, limits, flips, operatorWord);
    input.measures().forEach(pages::measure);
    pages.decisions.into(pages.page);
    pages.counts();
    pages
        .page
        .heading("Measures")
        .text(
            "Repeatability: same "
                + operatorWord
                + " again; reproducibility: another "
                + operatorWord
                + ". Standard deviations by analysis of variance; a gauge takes at"
                + " most 10 % of the total variation when good, 30 % when marginal ("
                + pages.rules.basis().source()
                + "). Parts that hardly vary make any gauge look"
                + " poor by this share: the limits above decide. A limit is held against 3"
                + " sigma of the gauge, a tolerance of two limits against 6 (AIAG MSA, precision to"
                + " tolerance).")
        .grid(
            List.of(
                "measure",
                "repeat",
                "reproduce",
                "gauge",
                "parts",
                "gauge of total",
                "categories",
                "verdict"),
            pages.summary);
    GaugeFlips.into(pages.page, flips, operatorWord);
    pages.page.add(pages.details);
    return pages.page.page("Gauge study");
  }

  private void counts() {
    page.text(
        "%d measured values of %d parts%s."
            .formatted(
                input.readings().size(),
                input.readings().stream().map(GaugeInput.Measured::part).distinct().count(),
                operatorWord.equals("operator") ? "" : "; operator stands for " + operatorWord));
  }

  private void measure(String name) {
    List<GaugeData.Reading> all = input.of(name);
    Cells cells =
        Cells.of(
            all.stream().map(r -> new Cells.Reading(r.part(), r.operator(), r.value())).toList());
    if (cells.parts().size() < 2 || cells.operators().size() < 2 || !cells.isConnected()) {
      // Refused there, naming the cell that lacks readings.
      GaugeData.of(all);
    }
    details.heading(name);
    List<GaugeData.Reading> whole = GaugeData.complete(all);
    Spread spread;
    if (whole.size() == all.size()) {
      GaugeStudy study = GaugeStudy.of(GaugeData.of(all));
      spread = study.anova().spread();
      balanced(study);
    } else {
      spread = Reml.of(cells);
      details
          .text(
              ("Readings are missing: components by restricted maximum likelihood (REML) from all"
                      + " %d readings of %d parts.")
                  .formatted(cells.size(), cells.parts().size()))
          .grid(METHOD, List.of(GaugeWords.method("REML", spread)));
    }
    if (spread.total() == 0) {
      details.text("All readings are alike: nothing varies, so no share and no categories.");
    }
    summary.add(GaugeWords.line(name, spread, rules));
    Optional<Sureness> sureness = Sureness.of(cells);
    sure(name, spread, sureness);
    details
        .chart(GaugePlots.byPart(name, cells))
        .chart(GaugePlots.byOperator(name, operatorWord, cells))
        .chart(GaugePlots.components(name, spread));
    drift(name);
    bias(name);
    if (limits.stream().anyMatch(limit -> limit.measure().equals(name))) {
      decisions.right(name, Bias.of(input.known(name)));
    }
    for (ClassLimit limit : limits) {
      if (limit.measure().equals(name)) {
        decisions.add(limit, cells, spread, sureness);
      }
    }
  }

  private void balanced(GaugeStudy study) {
    details
        .grid(METHOD, GaugeWords.methods(study))
        .text(GaugeWords.interaction(study.anova(), rules));
    if (study.averageRange().isEmpty()) {
      details.text(
          "The average and range method has constants for up to 10 parts, operators and trials;"
              + " there are more.");
    }
  }

  private void sure(String name, Spread spread, Optional<Sureness> sureness) {
    if (sureness.isEmpty()) {
      details.text(
          "No intervals: a part was not measured by every " + operatorWord + " at least once.");
      return;
    }
    Sureness s = sureness.get();
    List<List<String>> rows = new ArrayList<>();
    rows.add(GaugeWords.sure("repeat", s.of(spread.equipment(), Spread::equipment)));
    rows.add(GaugeWords.sure("reproduce", s.of(spread.operators(), Spread::operators)));
    rows.add(GaugeWords.sure("gauge", s.of(spread.gauge(), Spread::gauge)));
    rows.add(GaugeWords.sure("parts", s.of(spread.parts(), Spread::parts)));
    details
        .grid(List.of("component", GaugeWords.withUnit("standard deviation", name), "95 %"), rows)
        .text(
            "Generalised confidence intervals (Hamada and Weerahandi 2000). Few "
                + operatorWord
                + "s tell little of reproducibility, whatever the number of repeats.");
  }

  private void bias(String name) {
    List<Bias.Known> known = input.known(name);
    if (known.isEmpty()) {
      return;
    }
    Optional<Bias> bias = Bias.of(known);
    details.text(
        bias.map(
                b ->
                    GaugeWords.bias(b, GaugeWords.unit(name))
                        + " That is of every "
                        + operatorWord
                        + " of this study together; another one differs as reproducibility says.")
            .orElseGet(() -> GaugeWords.oneBoard(Bias.meanOf(known), GaugeWords.unit(name))));
  }

  private void drift(String name) {
    Optional<Drift> drift = Drift.of(input.dated(name));
    drift.ifPresent(d -> details.text(GaugeWords.drift(d)));
  }

  /** How often verdicts change, on the page of a gauge study. */
  private static final class GaugeFlips {

    private GaugeFlips() {}

    static void into(Page.Builder page, Flips flips, String operatorWord) {
      List<List<String>> rows = new ArrayList<>();
      flips
          .parts()
          .forEach(
              (part, rate) -> {
                Rate open = flips.undecided().get(part);
                if (rate.count() > 0 || open.count() > 0) {
                  rows.add(
                      List.of(
                          part,
                          rate.count() + " of " + rate.of(),
                          open.count() + " of " + open.of()));
                }
              });
      List<List<String>> operators = new ArrayList<>();
      flips.operators().forEach((who, rate) -> operators.add(List.of(who, Words.rate(rate))));
      if (!flips.parts().isEmpty()) {
        page.heading("Verdicts that change")
            .text(rows.isEmpty() ? "Every part got one verdict throughout." : "")
            .grid(
                List.of(operatorWord, "other than the part's usual verdict (95 %, by board)"),
                operators)
            .grid(List.of("part", "other than usual", "no decision"), rows);
      }
    }
  }
}
