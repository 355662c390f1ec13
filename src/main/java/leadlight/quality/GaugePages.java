package leadlight.quality;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.quality.gauge.Bias;
import leadlight.quality.gauge.Cells;
import leadlight.quality.gauge.Decisions;
import leadlight.quality.gauge.GaugePlots;
import leadlight.quality.gauge.NearLimit;
import leadlight.quality.gauge.Reml;
import leadlight.quality.gauge.Sureness;
import leadlight.statistics.Rate;

/** The page of a gauge study. */
public final class GaugePages {

  /** JCGM 106:2012: one-sided guard band at 95 %, in standard uncertainties. */
  private static final double GUARD = 1.645;

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

  private static final Map<String, String> JUDGES =
      Map.of(
          "good enough", "Can judge",
          "good enough with the guard band kept", "Can judge with the guard band kept",
          "not good enough", "Cannot judge");

  private final GaugeInput input;
  private final Flips flips;
  private final String operatorWord;
  private final List<ClassLimit> limits;
  private final GaugeRules rules = GaugeRules.builtIn();
  private final Page.Builder page = new Page.Builder();
  private final Page.Builder details = new Page.Builder();
  private final List<List<String>> summary = new ArrayList<>();
  private final Map<String, List<String>> judged = new TreeMap<>();
  private final Set<String> undecidable = new LinkedHashSet<>();
  private final List<String> fitness = new ArrayList<>();

  private GaugePages(GaugeInput input, List<ClassLimit> limits, Flips flips, String operatorWord) {
    this.input = input;
    this.limits = limits;
    this.flips = flips;
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
    pages.flips(flips, operatorWord);
    pages.page.add(pages.details);
    return pages.page.page("Gauge study");
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
    for (ClassLimit limit : limits) {
      if (limit.measure().equals(name)) {
        limit(limit, cells, spread, sureness);
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
    rows.add(sureLine("repeat", s.of(spread.equipment(), Spread::equipment)));
    rows.add(sureLine("reproduce", s.of(spread.operators(), Spread::operators)));
    rows.add(sureLine("gauge", s.of(spread.gauge(), Spread::gauge)));
    rows.add(sureLine("parts", s.of(spread.parts(), Spread::parts)));
    details
        .grid(List.of("component", "standard deviation," + GaugeWords.unit(name), "95 %"), rows)
        .text(
            "Generalised confidence intervals (Hamada and Weerahandi 2000). Few "
                + operatorWord
                + "s tell little of reproducibility, whatever the number of repeats.");
  }

  private static List<String> sureLine(String name, Estimate e) {
    return List.of(
        name,
        Words.significant(e.value()),
        Words.significant(e.lower()) + " to " + Words.significant(e.upper()));
  }

  private void bias(String name) {
    List<Bias.Known> known = input.known(name);
    if (known.isEmpty()) {
      return;
    }
    Optional<Bias> bias = Bias.of(known);
    details.text(
        bias.map(b -> words(b, GaugeWords.unit(name)))
            .orElse("Bias: one part has a known value; two or more are needed."));
  }

  private static String words(Bias b, String unit) {
    String mean =
        "Bias against known values of %d parts: %s%s (%s to %s), %s."
            .formatted(
                b.parts(),
                Words.significant(b.mean().value()),
                unit,
                Words.significant(b.mean().lower()),
                Words.significant(b.mean().upper()),
                b.p() < 0.05 ? "more than chance (" + Words.p(b.p()) + ")" : "no more than chance");
    String slope =
        b.slope()
            .map(
                e ->
                    " Linearity: the bias changes by %s of the value (%s to %s)%s."
                        .formatted(
                            Words.percent(e.value()),
                            Words.fixed(100 * e.lower(), 1),
                            Words.percent(e.upper()),
                            e.lower() > 0 || e.upper() < 0 ? ", more than chance" : ""))
            .orElse(" Linearity needs three parts of different values.");
    return mean + slope;
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

  private void limit(ClassLimit limit, Cells cells, Spread spread, Optional<Sureness> sureness) {
    double sd = spread.gauge();
    double guard = GUARD * sd;
    double share = limit.share(sd);
    String unit = GaugeWords.unit(limit.measure());
    String upTo =
        sureness
            .map(s -> s.of(share, draw -> limit.share(draw.gauge())).upper())
            .map(most -> ", at worst " + Words.percent(most) + " (95 %)")
            .orElse("");
    judged.computeIfAbsent(JUDGES.get(verdict(share)), how -> new ArrayList<>()).add(limit.name());
    fitness.add(
        "%s for %s (limit %s%s; %s sigma take %s of %s%s; guard band %s%s)"
            .formatted(
                verdict(share),
                limit.name(),
                Words.significant(limit.value()),
                unit,
                limit.lower().isPresent() ? "6" : "3",
                Words.percent(share),
                limit.lower().isPresent() ? "the tolerance" : "it",
                upTo,
                Words.significant(guard),
                unit));
    List<String> near = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < cells.parts().size(); i++) {
      sum += cells.partMean(i);
      if (limit.distance(cells.partMean(i)) < guard) {
        near.add(cells.parts().get(i));
      }
    }
    undecidable.addAll(near);
    details.text(
        "Limit of %s %s (%s): guard band %s each side; parts inside it: %s."
            .formatted(
                limit.name(),
                Words.significant(limit.value()),
                limit.source(),
                Words.significant(guard),
                near.isEmpty() ? "none" : Words.named(near)));
    if (sd > 0) {
      details
          .text(
              "Risks of a decision (JCGM 106, clause 9), parts taken as the process. Of joints exactly"
                  + " at the limit 50, 10, 5 and 1 % are accepted. score and batch decide at 95 %;"
                  + " --guard-band 90 or 99 takes another line:")
          .grid(
              Decisions.HEADER,
              Decisions.lines(limit, sum / cells.parts().size(), spread.parts(), sd))
          .grid(
              List.of("part from this limit", "parts", "other than the part's usual verdict"),
              NearLimit.lines(cells, limit, sd, flips.parts()));
    }
  }

  private String verdict(double share) {
    if (share <= rules.grrAcceptable()) {
      return "good enough";
    }
    return share <= rules.grrMarginal()
        ? "good enough with the guard band kept"
        : "not good enough";
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

  /** "Can judge: class 1. Can judge with the guard band kept: class 2. Cannot judge: class 3." */
  private String plain() {
    List<String> sentences = new ArrayList<>();
    judged.forEach((how, names) -> sentences.add(how + ": " + String.join(", ", names) + "."));
    return String.join(" ", sentences);
  }

  private void paragraph(Flips flips, String operatorWord) {
    String byLimit =
        fitness.isEmpty()
            ? "No class limit applies to these measures."
            : "This microscope and lamp are " + String.join("; ", fitness) + ".";
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
