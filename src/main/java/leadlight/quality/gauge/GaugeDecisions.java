package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.quality.Page;
import leadlight.quality.Words;
import leadlight.quality.gauge.variance.Cells;
import leadlight.quality.gauge.variance.GaugeRules;
import leadlight.quality.gauge.variance.Spread;
import leadlight.quality.gauge.variance.Sureness;
import leadlight.quality.grades.Grades;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;

/** Which limits a gauge is good enough to decide, and which parts it cannot judge. */
final class GaugeDecisions {

  /** JCGM 106:2012: one-sided guard band at 95 %, in standard uncertainties. */
  private static final double GUARD = 1.645;

  private final Flips flips;
  private final GaugeRules rules;
  private final Page.Builder details;
  private final Set<String> undecidable = new LinkedHashSet<>();
  private final List<String> fitness = new ArrayList<>();
  private final List<String> bias = new ArrayList<>();
  private final List<String> untested = new ArrayList<>();

  /** Risks and parts near each limit go into the details. */
  GaugeDecisions(Flips flips, GaugeRules rules, Page.Builder details) {
    this.flips = flips;
    this.rules = rules;
    this.details = details;
  }

  /** Takes whether a measure that limits are set for is read right on average. */
  void right(String measure, Optional<Bias> known) {
    if (known.isEmpty()) {
      untested.add(measure);
    }
    known.map(b -> GaugeWords.wrong(measure, b)).ifPresent(bias::add);
  }

  private String rightness() {
    return String.join("", bias)
        + (untested.isEmpty()
            ? ""
            : (" Whether %s is read right on average was not tested: --known names values that are, on"
                    + " two boards or parts at least.")
                .formatted(String.join(", ", untested)));
  }

  void add(ClassLimit limit, Cells cells, Spread spread, Optional<Sureness> sureness) {
    double sd = spread.gauge();
    double guard = GUARD * sd;
    double share = limit.share(sd);
    String unit = GaugeWords.unit(limit.measure());
    String upTo =
        sureness
            .map(s -> s.of(share, draw -> limit.share(draw.gauge())).upper())
            .map(most -> ", at worst " + Words.percent(most) + " (95 %)")
            .orElse("");
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
                  + " --guard-band 99 takes a line farther inside (never one nearer than the limits' own):")
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

  private void addFlips() {
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

  /** What the gauge can decide and what not, in one paragraph. */
  void into(Page.Builder page) {
    addFlips();
    String byLimit =
        fitness.isEmpty()
            ? "No class limit applies to these measures; a tolerance of yours is named by --tolerance,"
                + " the leads' width, for the classes' side overhang, by --lead-width."
            : "This microscope and lamp are " + String.join("; ", fitness) + "." + rightness();
    String byVerdict =
        flips.parts().isEmpty()
            ? ""
            : " Verdicts other than the part's usual one: "
                + Words.rate(flips.verdicts())
                + "; parts that changed at least once: "
                + Words.rate(flips.flipping())
                + ".";
    String cannot =
        undecidable.isEmpty() && fitness.isEmpty() && flips.parts().isEmpty()
            ? ""
            : undecidable.isEmpty()
                ? " No part was found that it cannot judge."
                : " It cannot judge %s reliably: %s; settle these at the bench."
                    .formatted(
                        Words.count(undecidable.size(), "part"),
                        Words.named(List.copyOf(undecidable)));
    page.strong(byLimit + byVerdict + cannot);
  }

  /** How often verdicts change by how far the part lies from a limit. */
  private static final class NearLimit {

    /** Ends of the bands, in standard deviations of the gauge. */
    private static final double[] ENDS = {1, 2, 3, Double.POSITIVE_INFINITY};

    private NearLimit() {}

    /**
     * Lines of a table: distance, parts, verdicts other than the part's usual one.
     *
     * @param flips by part
     */
    public static List<List<String>> lines(
        Cells cells, ClassLimit limit, double gaugeSd, Map<String, Rate> flips) {
      List<List<String>> lines = new ArrayList<>();
      double from = 0;
      for (double end : ENDS) {
        ClusterRate.Builder rate = new ClusterRate.Builder();
        int parts = 0;
        for (int i = 0; i < cells.parts().size(); i++) {
          double distance = limit.distance(cells.partMean(i)) / gaugeSd;
          Rate mine = flips.get(cells.parts().get(i));
          if (mine != null && distance >= from && distance < end) {
            rate.add(Grades.cluster(cells.parts().get(i)), mine.count(), mine.of());
            parts++;
          }
        }
        if (parts > 0) {
          lines.add(List.of(band(from, end), "" + parts, Words.rate(rate.rate())));
        }
        from = end;
      }
      return lines;
    }

    private static String band(double from, double end) {
      return Double.isInfinite(end)
          ? "more than %.0f sigma".formatted(from)
          : "%.0f to %.0f sigma".formatted(from, end);
    }
  }
}
