package leadlight.quality.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Plot.Series;
import leadlight.quality.Plot.Style;
import leadlight.quality.Words;

/** Pages of double and sequential plans: the plan, its curve, its average sample number. */
public final class SchemePages {

  private static final int STEPS = 120;
  private static final int MOST_LINES = 40;

  private SchemePages() {}

  /** The page of a double plan. */
  public static Page page(DoublePlan plan, int lot) {
    double most = reach(plan::accepts);
    return new Page.Builder()
        .strong("Lot of %d: %s.".formatted(lot, plan.words()))
        .text("Plan: " + plan.why() + ".")
        .heading("What the plan can tell")
        .grid(HEADER, lines(most, plan::accepts, plan::sampleNumber))
        .chart(curve("Operating characteristic", "accepted, %", most, p -> 100 * plan.accepts(p)))
        .chart(curve("Average sample number", "units", most, plan::sampleNumber))
        .page("Double sampling plan");
  }

  /** The page of a sequential plan. */
  public static Page page(SequentialPlan plan, int lot) {
    double most = Math.min(1, 2 * plan.bad());
    DoubleUnaryOperator accepts = p -> plan.course(p).accepts();
    DoubleUnaryOperator number = p -> plan.course(p).sampleNumber();
    Page.Builder page = new Page.Builder().strong("Lot of %d: %s.".formatted(lot, plan.words()));
    if (plan.end() > lot) {
      page.strong(
          "The plan may go on to %d units, more than the lot has: take another."
              .formatted(plan.end()));
    }
    return page.text(
            "Wald 1947, the principle of ISO 39511; its tables are not carried. Curves are exact for"
                + " a process, the end at %d units included.".formatted(plan.end()))
        .heading("What the plan can tell")
        .grid(HEADER, lines(most, accepts, number))
        .chart(
            curve(
                "Operating characteristic",
                "accepted, %",
                most,
                p -> 100 * accepts.applyAsDouble(p)))
        .chart(curve("Average sample number", "units", most, number))
        .heading("When to stop")
        .grid(List.of("units", "accept with", "refuse with"), stops(plan))
        .page("Sequential sampling plan");
  }

  private static final List<String> HEADER =
      List.of("share nonconforming", "accepted", "units inspected on average");

  private static List<List<String>> lines(
      double most, DoubleUnaryOperator accepts, DoubleUnaryOperator number) {
    return IntStream.rangeClosed(0, 8)
        .mapToDouble(i -> most * i / 8)
        .mapToObj(
            p ->
                List.of(
                    Words.significant(100 * p) + " %",
                    Words.percent(accepts.applyAsDouble(p)),
                    Words.fixed(number.applyAsDouble(p), 1)))
        .toList();
  }

  /** Units at which a number changes. */
  private static List<List<String>> stops(SequentialPlan plan) {
    List<List<String>> rows = new ArrayList<>();
    for (int n = 1; n <= plan.end() && rows.size() < MOST_LINES; n++) {
      boolean changes =
          n == 1
              || plan.acceptAt(n) != plan.acceptAt(n - 1)
              || plan.refuseAt(n) != plan.refuseAt(n - 1);
      if (changes) {
        String accept = plan.acceptAt(n) < 0 ? "not yet" : plan.acceptAt(n) + " or fewer";
        String refuse = plan.refuseAt(n) > n ? "not yet" : plan.refuseAt(n) + " or more";
        rows.add(List.of("from " + n, accept, refuse));
      }
    }
    return rows;
  }

  private static double reach(DoubleUnaryOperator accepts) {
    double most = 0.01;
    while (most < 1 && accepts.applyAsDouble(most) > 0.02) {
      most = Math.min(1, most * 1.25);
    }
    return most;
  }

  private static Plot curve(String title, String axis, double most, DoubleUnaryOperator of) {
    List<double[]> points =
        IntStream.rangeClosed(0, STEPS)
            .mapToObj(i -> most * i / STEPS)
            .map(p -> new double[] {100 * p, of.applyAsDouble(p)})
            .toList();
    return new Plot(
        title,
        "share nonconforming, %",
        axis,
        List.of(),
        List.of(new Series("process (binomial)", Style.LINE, points)));
  }
}
