package leadlight.quality;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.statistics.Rate;

/** The page of a gauge study. */
public final class GaugePages {

  /** JCGM 106:2012: one-sided guard band at 95 %, in standard uncertainties. */
  private static final double GUARD = 1.645;

  private final GaugeInput input;
  private final List<ClassLimit> limits;
  private final GaugeRules rules = GaugeRules.builtIn();
  private final Page.Builder page = new Page.Builder();
  private final Page.Builder details = new Page.Builder();
  private final List<List<String>> summary = new ArrayList<>();
  private final Set<String> undecidable = new LinkedHashSet<>();
  private final List<String> fitness = new ArrayList<>();

  private GaugePages(GaugeInput input, List<ClassLimit> limits) {
    this.input = input;
    this.limits = limits;
  }

  /**
   * The page.
   *
   * @param open verdicts that decide nothing
   * @param operatorWord what "operator" stands for in this study, as "lamp"
   */
  public static Page page(
      GaugeInput input, List<ClassLimit> limits, Set<String> open, String operatorWord) {
    GaugePages pages = new GaugePages(input, limits);
    input.measures().forEach(pages::measure);
    Flips flips = Flips.of(input.verdicts(), open);
    pages.flipsInto(flips);
    pages.paragraph(flips, operatorWord);
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
                + " poor by this share: the limits above decide.")
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
    pages.flips(flips, operatorWord);
    pages.page.add(pages.details);
    return pages.page.page("Gauge study");
  }

  private void measure(String name) {
    List<GaugeData.Reading> all = input.of(name);
    List<GaugeData.Reading> complete = GaugeData.complete(all);
    long parts = complete.stream().map(GaugeData.Reading::part).distinct().count();
    long before = all.stream().map(GaugeData.Reading::part).distinct().count();
    // Too little is complete: say which cell lacks what.
    GaugeStudy study = GaugeStudy.of(GaugeData.of(parts < 2 ? all : complete));
    Spread spread = study.anova().spread();
    summary.add(GaugeWords.line(name, spread, rules));
    details.heading(name);
    if (parts < before) {
      details.text(
          (before - parts)
              + " of "
              + before
              + " parts were left out: not measured in every photo.");
    }
    if (spread.total() == 0) {
      details.text("All readings are alike: nothing varies, so no share and no categories.");
    }
    details.grid(
        List.of(
            "method",
            "repeat",
            "reproduce",
            "gauge",
            "parts",
            "total",
            "gauge of total",
            "categories"),
        GaugeWords.methods(study));
    details.text(GaugeWords.interaction(study.anova(), rules));
    if (study.averageRange().isEmpty()) {
      details.text(
          "The average and range method has constants for up to 10 parts, operators and trials;"
              + " there are more.");
    }
    drift(name);
    limits.stream().filter(l -> l.measure().equals(name)).forEach(l -> limit(l, study));
  }

  private void drift(String name) {
    Optional<Drift> drift = Drift.of(input.dated(name));
    drift.ifPresent(
        d ->
            details.text(
                "Drift: %s a day (%s to %s), %s."
                    .formatted(
                        Words.significant(d.perDay().value()),
                        Words.significant(d.perDay().lower()),
                        Words.significant(d.perDay().upper()),
                        d.p() < 0.05
                            ? "more than chance (" + Words.p(d.p()) + ")"
                            : "no more than chance")));
  }

  private void limit(ClassLimit limit, GaugeStudy study) {
    double guard = GUARD * study.anova().spread().gauge();
    double share = guard / limit.value();
    String verdict =
        share <= rules.grrAcceptable()
            ? "good enough"
            : share <= rules.grrMarginal()
                ? "good enough with the guard band kept"
                : "not good enough";
    fitness.add(
        "%s for class %d (limit %s%s, guard band %s%s, %s of it)"
            .formatted(
                verdict,
                limit.productClass(),
                Words.significant(limit.value()),
                GaugeWords.unit(limit.measure()),
                Words.significant(guard),
                GaugeWords.unit(limit.measure()),
                Words.percent(share)));
    List<String> near = new ArrayList<>();
    for (int i = 0; i < study.data().parts().size(); i++) {
      if (Math.abs(study.data().partMean(i) - limit.value()) < guard) {
        near.add(study.data().parts().get(i));
      }
    }
    undecidable.addAll(near);
    details.text(
        "Class %d limit %s (%s): guard band %s each side; parts inside it: %s."
            .formatted(
                limit.productClass(),
                Words.significant(limit.value()),
                limit.source(),
                Words.significant(guard),
                near.isEmpty() ? "none" : Words.named(near)));
  }

  private void flipsInto(Flips flips) {
    flips
        .parts()
        .forEach(
            (part, rate) -> {
              if (rate.count() > 0) {
                undecidable.add(part);
              }
            });
    flips
        .undecided()
        .forEach(
            (part, rate) -> {
              if (rate.count() > 0) {
                undecidable.add(part);
              }
            });
  }

  private void paragraph(Flips flips, String operatorWord) {
    String byLimit =
        fitness.isEmpty()
            ? "No class limit applies to these measures."
            : "By side overhang alone this microscope and lamp are "
                + String.join("; ", fitness)
                + ".";
    String byVerdict =
        flips.parts().isEmpty()
            ? ""
            : " Verdicts other than the part's usual one: "
                + Words.rate(flips.verdicts())
                + "; parts that changed at least once: "
                + Words.rate(flips.flipping())
                + ".";
    String cannot =
        undecidable.isEmpty()
            ? " No part was found that it cannot judge."
            : " It cannot judge reliably: "
                + Words.named(List.copyOf(undecidable))
                + "; settle these at the bench.";
    page.strong(byLimit + byVerdict + cannot);
    page.text(
        "%d measured values of %d parts; operator stands for %s."
            .formatted(
                input.readings().size(),
                input.readings().stream().map(GaugeInput.Measured::part).distinct().count(),
                operatorWord));
  }

  private void flips(Flips flips, String operatorWord) {
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
          .grid(List.of(operatorWord, "other than the part's usual verdict (95 %)"), operators)
          .grid(List.of("part", "other than usual", "no decision"), rows);
    }
  }
}
