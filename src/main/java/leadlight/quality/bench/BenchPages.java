package leadlight.quality.bench;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Plot.Series;
import leadlight.quality.Plot.Style;
import leadlight.quality.Words;
import leadlight.statistics.ClusterRate;

/** The page of the tool at the bench. */
public final class BenchPages {

  private BenchPages() {}

  /** The page. */
  public static Page page(BenchTally tally) {
    Page.Builder page =
        new Page.Builder()
            .strong(Trust.builtIn().verdict(tally))
            .text(
                "%d joints in the record; tried at the bench of those judged: %s; of those passed: %s."
                    .formatted(
                        tally.joints(), Words.rate(tally.tried()), Words.rate(tally.passedTried())))
            .heading("At the bench")
            .grid(
                List.of("figure", "value (95 %, by board)"),
                List.of(
                    List.of("bad, of joints passed and tried", Words.rate(tally.badOfPassed())),
                    List.of("bad, of joints called and settled", Words.rate(tally.badOfCalled())),
                    List.of("passed, of joints found bad (missed)", Words.rate(tally.missed())),
                    List.of("overruled by a person, of judged", Words.rate(tally.overruled()))))
            .text(missing(tally));
    corrected(tally, page);
    if (!tally.byFinding().isEmpty()) {
      page.heading("Calls by finding")
          .grid(
              List.of("finding", "bad at the bench"),
              tally.byFinding().entrySet().stream()
                  .map(entry -> List.of(entry.getKey().id(), Words.rate(entry.getValue())))
                  .toList());
    }
    if (!tally.byMonth().isEmpty()) {
      page.heading("Over time")
          .chart(plot(tally))
          .grid(
              List.of("month", "verdicts proved wrong, of those tried"),
              tally.byMonth().entrySet().stream()
                  .map(entry -> List.of(entry.getKey(), Words.rate(entry.getValue())))
                  .toList());
    }
    return page.page("The tool at the bench");
  }

  private static String missing(BenchTally tally) {
    int untried = tally.passedTried().of() - tally.passedTried().count();
    return ("What is missing: %s never tried, so faults among them are not"
            + " counted. A firm lead rules out an open joint and nothing else, a meter that reads as"
            + " it should an open one and a short; other findings are not settled by them. A person"
            + " mostly looks where the tool called, so overrules say little of misses.")
        .formatted(Words.count(untried, "passed joint") + (untried == 1 ? " was" : " were"));
  }

  /** Begg and Greenes: both groups of the tool's verdicts by what was tried of each. */
  private static void corrected(BenchTally tally, Page.Builder page) {
    ClusterRate passed = tally.badOfPassed();
    ClusterRate called = tally.badOfCalled();
    double all = tally.passedTried().of();
    double calledAll = tally.tried().of() - all;
    if (passed.of() == 0 || called.of() == 0 || called.count() + passed.count() == 0) {
      return;
    }
    double hidden = all * passed.share();
    double seen = calledAll * called.share();
    page.text(
        ("If tried joints are like the others of their verdict, %s of all bad joints passed (Begg and"
                + " Greenes 1983, Biometrics 39:207); without an interval, for that \"if\" is not"
                + " tested.")
            .formatted(Words.percent(hidden / (hidden + seen))));
  }

  private static Plot plot(BenchTally tally) {
    List<ClusterRate> rates = List.copyOf(tally.byMonth().values());
    List<double[]> shares = new ArrayList<>();
    List<double[]> ends = new ArrayList<>();
    for (int i = 0; i < rates.size(); i++) {
      shares.add(new double[] {i, 100 * rates.get(i).share()});
      ends.add(new double[] {i, 100 * rates.get(i).lower()});
      ends.add(new double[] {i, 100 * rates.get(i).upper()});
    }
    return new Plot(
        "Verdicts proved wrong at the bench",
        "month",
        "share of those tried, %",
        List.copyOf(tally.byMonth().keySet()),
        List.of(
            new Series("95 %", Style.SPANS, ends),
            new Series("share", Style.LINE, shares),
            new Series("", Style.POINTS, shares)));
  }
}
