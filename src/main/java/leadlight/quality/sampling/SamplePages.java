package leadlight.quality.sampling;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Words;

/** Pages of sampling: plan, work sheet, decision. */
public final class SamplePages {

  private static final int STEPS = 120;

  /** Above this share of the lot drawing without putting back matters (common practice). */
  private static final double SMALL_LOT = 0.1;

  private SamplePages() {}

  private static String between(int from, int to) {
    return from == to ? "" + from : from + " to " + to;
  }

  /**
   * A plan with its operating characteristic.
   *
   * @param lot size of the lot
   * @param notes what led to the plan, as switches of severity
   */
  public static Page plan(Plan plan, int lot, List<String> notes) {
    Page.Builder page = new Page.Builder();
    page.strong("Lot of %d: %s.".formatted(lot, plan.words())).text("Plan: " + plan.why() + ".");
    notes.forEach(page::text);
    if (plan.refuse() > plan.accept() + 1) {
      page.text(
          "With %s nonconforming the lot is accepted and reduced inspection ends; the curve counts such"
                  .formatted(between(plan.accept() + 1, plan.refuse() - 1))
              + " lots as accepted.");
    }
    List<List<String>> rows = new ArrayList<>();
    for (double pa : new double[] {0.95, 0.50, 0.10, 0.05}) {
      int most = Operating.mostOfLot(plan, lot, pa);
      rows.add(
          List.of(
              Words.percent(pa),
              percentFine(Operating.qualityAt(plan, pa)),
              most < 0 ? "none" : most + " of " + lot));
    }
    page.heading("What the plan can tell")
        .text(
            plan.size() > SMALL_LOT * lot
                ? "The sample is more than a tenth of the lot: go by the lot's own column (hypergeometric)."
                : "")
        .grid(
            List.of(
                "accepted at least",
                "process with up to this share nonconforming (binomial)",
                "this lot with up to (hypergeometric)"),
            rows)
        .chart(curve(plan, lot));
    if (plan.size() < lot) {
      Rectifying.Limit limit = Rectifying.limit(plan, lot);
      page.text(
          "If refused lots are sorted fully and mended, at most %s nonconforming leave on average"
                  .formatted(percentFine(limit.quality()))
              + " (AOQL), at a process of "
              + percentFine(limit.at())
              + ".");
    }
    return page.page("Sampling plan");
  }

  private static String percentFine(double share) {
    return Words.significant(100 * share) + " %";
  }

  private static Plot curve(Plan plan, int lot) {
    double most = Math.min(1, 1.5 * Operating.qualityAt(plan, 0.05));
    List<double[]> process = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double share = most * i / STEPS;
      process.add(new double[] {100 * share, 100 * Operating.ofProcess(plan, share)});
    }
    List<double[]> one = new ArrayList<>();
    int every = Math.max(1, (int) Math.ceil(most * lot / 40));
    for (int k = 0; k <= most * lot; k += every) {
      one.add(new double[] {100.0 * k / lot, 100 * Operating.ofLot(plan, lot, k)});
    }
    return new Plot(
        "Operating characteristic: n %d, Ac %d".formatted(plan.size(), plan.accept()),
        "share nonconforming, %",
        "accepted, %",
        List.of(),
        List.of(
            new Plot.Series("process (binomial)", Plot.Style.LINE, process),
            new Plot.Series("this lot (hypergeometric)", Plot.Style.POINTS, one)));
  }

  /**
   * A work sheet without any verdict.
   *
   * @param words what to do
   * @param plan when to stop
   * @param seed of the draw
   * @param pictures one a unit, in the order of the draw
   */
  public static Page sheet(String words, Inspection plan, long seed, List<Page.Picture> pictures) {
    List<Page.Picture> boxes = new ArrayList<>();
    for (Page.Picture picture : pictures) {
      List<String> lines = new ArrayList<>(picture.lines());
      if (!plan.inFull()) {
        lines.set(0, (boxes.size() + 1) + ": " + lines.get(0));
      }
      if (picture.png().length == 0) {
        lines.add("no picture: find it on the board");
      }
      lines.add("\u2610 acceptable   \u2610 defect");
      lines.add("finding: ____________________");
      boxes.add(new Page.Picture(picture.png(), lines));
    }
    return new Page.Builder()
        .text(words)
        .text(
            plan.inFull()
                ? ""
                : "Inspect in this order; stop where the plan says so. leadlight sample decide says"
                    + " whether to go on, and with which units; --ask asks for them one by one.")
        .text(
            "Look at each unit under the microscope and judge it by your own standard; the"
                + " picture, with ticks at the joint, only says which one it is. What was said of it before is not shown. Random"
                + " order, seed "
                + seed
                + ". Inspector: ____________________  Date: ____________")
        .text(
            "Work with extraction on, hands washed, wrist strap on and power off and discharged;"
                + " local rules come first.")
        .pictures(boxes)
        .page(
            "Work sheet: "
                + (plan.inFull() ? "" : "up to ")
                + Words.count(pictures.size(), "unit")
                + " to inspect");
  }

  /** A decision. */
  public static Page decision(LotDecision decision, List<String> notes, List<String> refused) {
    Page.Builder page = new Page.Builder();
    page.strong(decision.reasons().get(0));
    decision.reasons().stream().skip(1).forEach(page::text);
    page.text("Plan: " + decision.plan().why() + ".");
    notes.forEach(page::text);
    if (!refused.isEmpty()) {
      page.heading("Nonconforming").text(String.join("; ", refused) + ".");
    }
    return page.page("Decision on the lot");
  }
}
