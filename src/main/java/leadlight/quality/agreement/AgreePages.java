package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import leadlight.quality.Page;
import leadlight.quality.Words;
import leadlight.quality.agreement.AgreementLimits.Step;
import leadlight.statistics.ClusterRate;

/** The page of an agreement study. */
public final class AgreePages {

  private static final int MOST_DIVIDED = 40;

  private static final String INTERVALS =
      "Intervals leave out a photo (or an item, where photos are not named) at a time: repeats and"
          + " joints of one photo are not counted as independent. Gwet's AC1 stands beside kappa"
          + " because kappa falls towards 0 where one category is rare, however well graders agree.";

  private final AgreementStudy study;
  private final Optional<Ordered> ordered;
  private final AgreementLimits limits = AgreementLimits.builtIn();
  private final Page.Builder page = new Page.Builder();

  private AgreePages(AgreementStudy study, Optional<Ordered> ordered) {
    this.study = study;
    this.ordered = ordered;
  }

  /**
   * The page.
   *
   * @param picture of an item; empty bytes if there is none
   */
  public static Page page(AgreementStudy study, Function<String, byte[]> picture) {
    return page(study, Optional.empty(), picture);
  }

  /**
   * The page with weighted kappa.
   *
   * @param ordered verdicts from best to worst, if their order counts
   * @param picture of an item; empty bytes if there is none
   */
  public static Page page(
      AgreementStudy study, Optional<Ordered> ordered, Function<String, byte[]> picture) {
    AgreePages pages = new AgreePages(study, ordered);
    pages.setUp();
    pages.within();
    pages.between();
    pages.against();
    pages.confusion();
    pages.divided(picture);
    return pages.page.page("Agreement of graders");
  }

  private void setUp() {
    List<String> names = study.appraisers();
    if (!study.appraisals().isEmpty()) {
      page.strong(AgreeSummary.words(study.appraisals(), limits));
    }
    page.text(
        "%s, %s: %s%s."
            .formatted(
                Words.count(study.grades().items().size(), "item"),
                Words.count(names.size(), "grader"),
                String.join(", ", names),
                study
                    .reference()
                    .map(r -> "; reference: " + r)
                    .orElse("; no reference (--reference GRADER names one)")));
    int complete = study.complete();
    if (complete < study.grades().items().size()) {
      page.strong(
          "%d of %d items were graded by everybody in every trial; figures over all graders rest on"
                  .formatted(complete, study.grades().items().size())
              + " these, figures of two graders on those both have graded.");
    }
    study.dropped().forEach(page::text);
    page.text(
        study.reading().asGiven()
            ? "Agreement is between the verdicts as given."
            : "Agreement is between good, bad and no decision; bad is "
                + String.join(" or ", study.reading().bad().stream().sorted().toList())
                + ".");
  }

  private void within() {
    List<List<String>> rows = new ArrayList<>();
    for (String grader : study.appraisers()) {
      study
          .repeated(grader)
          .ifPresent(
              r -> rows.add(List.of(grader, "" + study.grades().trials(grader), Words.rate(r))));
    }
    page.heading("Each grader with itself")
        .text(rows.isEmpty() ? "Nobody graded twice: repeatability is not known." : "")
        .grid(List.of("grader", "trials", "same verdict every time (95 %)"), rows);
  }

  private void between() {
    List<List<String>> rows = new ArrayList<>();
    for (AgreementStudy.Pair pair : study.pairs()) {
      Coefficient kappa = pair.calls().kappa();
      rows.add(
          List.of(
              pair.one() + " and " + pair.other(),
              "" + pair.table().total(),
              pair.table().agreement().map(Words::percent).orElse("nothing in common"),
              kappa.words(),
              kappa.value().map(limits.kappa()::verdict).orElse(""),
              pair.calls().ac1().words()));
    }
    if (rows.isEmpty()) {
      return;
    }
    page.heading("Graders with each other")
        .text(INTERVALS)
        .grid(
            List.of("pair", "grades", "agree", "Cohen's kappa (95 %)", "by kappa", "AC1 (95 %)"),
            rows);
    study
        .together()
        .ifPresent(
            calls ->
                page.text(
                    "All together, Fleiss' kappa: %s; Gwet's AC1: %s."
                        .formatted(calls.kappa().words(), calls.ac1().words())));
    weighted();
  }

  private void weighted() {
    for (Ordered order : ordered.stream().toList()) {
      List<List<String>> rows = new ArrayList<>();
      for (AgreementStudy.Pair pair : study.pairs()) {
        PairCalls calls =
            Pairing.ordered(study.grades(), pair.one(), pair.other(), order.verdicts());
        rows.add(
            List.of(
                pair.one() + " and " + pair.other(),
                "" + calls.table().total(),
                calls.weightedKappa(order.disagreement()).words()));
      }
      page.text("Order: " + order.words() + ". Grades outside this order are left out.")
          .grid(List.of("ordered pair", "grades", "weighted kappa (95 %)"), rows);
    }
  }

  private void against() {
    List<Appraisal> appraisals = study.appraisals();
    if (appraisals.isEmpty()) {
      page.text("Without a reference nobody is right or wrong: no misses, no false alarms.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Appraisal a : appraisals) {
      rows.add(line(a, "judged right every time", a.effective(), limits.effectiveness()));
      rows.add(line(a, "missed", a.missed(), limits.miss()));
      rows.add(line(a, "false alarm", a.falseAlarm(), limits.falseAlarm()));
      rows.add(List.of(a.grader(), "no decision", "", Words.rate(a.undecided())));
      rows.add(
          List.of(
              a.grader(),
              "kappa",
              a.kappaByItem().value().map(limits.kappa()::verdict).orElse(""),
              a.kappaByItem().words()));
      rows.add(List.of(a.grader(), "AC1", "", a.ac1().words()));
      rows.add(List.of(a.grader(), "bias", "", bias(a)));
    }
    page.heading("Against the reference")
        .text(
            "Verdicts: "
                + limits.miss().source()
                + "; a rate is acceptable by its value, its interval says how far to trust that."
                + " An open decision is neither missed nor a false alarm, but it is not right.")
        .chart(AgreeSummary.plot(appraisals))
        .grid(List.of("grader", "figure", "verdict", "value (95 %)"), rows)
        .text(
            "System effectiveness, items on which all graders were right every time: "
                + Words.rate(study.system())
                + ". Joints of one photo are alike, and so are grades of one item: intervals count"
                + " photos, or items; as if every grade stood alone, misses are "
                + String.join(
                    "; ",
                    appraisals.stream()
                        .map(a -> a.grader() + " " + Words.rate(a.missed().plain()))
                        .toList())
                + " (Wilson).");
  }

  private static List<String> line(Appraisal a, String name, ClusterRate rate, Step step) {
    return List.of(
        a.grader(), name, rate.of() == 0 ? "" : step.verdict(rate.share()), Words.rate(rate));
  }

  private static String bias(Appraisal a) {
    if (a.biasP().isEmpty()) {
      return "no wrong grade";
    }
    double p = a.biasP().get();
    String counts =
        "%d false alarms, %d missed".formatted(a.falseAlarm().count(), a.missed().count());
    if (p >= 0.05) {
      return counts + ": no side shown (" + Words.p(p) + ")";
    }
    boolean strict = a.falseAlarm().count() > a.missed().count();
    return counts + (strict ? ": too strict" : ": too lenient") + " (" + Words.p(p) + ")";
  }

  private void confusion() {
    if (study.reference().isEmpty()) {
      return;
    }
    page.heading("What was called what");
    for (String grader : study.appraisers()) {
      List<List<String>> rows = new ArrayList<>();
      for (Map.Entry<String, Map<String, Integer>> entry : study.confusion(grader).entrySet()) {
        List<String> calls = new ArrayList<>();
        entry.getValue().forEach((call, count) -> calls.add(call + " " + count));
        rows.add(List.of(entry.getKey(), String.join(", ", calls)));
      }
      page.grid(List.of("reference", "said by " + grader), rows);
    }
  }

  private void divided(Function<String, byte[]> picture) {
    List<AgreementStudy.Divided> divided = study.divided();
    page.heading("Items that divide the graders");
    if (divided.isEmpty()) {
      page.text("None.");
      return;
    }
    page.text(
        Words.count(divided.size(), "item")
            + (divided.size() > MOST_DIVIDED ? ", the " + MOST_DIVIDED + " most divided shown" : "")
            + ".");
    List<Page.Picture> pictures = new ArrayList<>();
    for (AgreementStudy.Divided d : divided.subList(0, Math.min(MOST_DIVIDED, divided.size()))) {
      List<String> lines = new ArrayList<>(List.of(d.item()));
      d.said().forEach((who, what) -> lines.add(who + ": " + what));
      pictures.add(new Page.Picture(picture.apply(d.item()), lines));
    }
    page.pictures(pictures);
  }
}
