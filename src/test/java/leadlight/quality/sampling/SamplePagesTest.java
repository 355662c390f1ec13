package leadlight.quality.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.agreement.Pages;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;

/** Pages of sampling, by the plan of letter H, AQL 1.0 (ISO 2859-1, table 2-A): 50, Ac 1, Re 2. */
class SamplePagesTest {

  private static final Plan PLAN = new Plan(50, 1, 2, "ISO 2859-1");

  /** ISO 2859-1, tables 5 and 6: .715, 3.33 and 7.56 %. */
  @Test
  void thePlanSaysWhatItCanTell() {
    Page page = SamplePages.plan(PLAN, 400, List.of("tightened before"));

    assertThat(Pages.line(page, "accepted at least", "95.0 %").get(1)).startsWith("0.71");
    assertThat(Pages.line(page, "accepted at least", "50.0 %").get(1)).startsWith("3.3");
    assertThat(Pages.line(page, "accepted at least", "10.0 %").get(1)).startsWith("7.5");
    assertThat(Pages.words(page)).contains("ISO 2859-1").contains("tightened before");
    assertThat(Pages.strong(page)).contains("400").contains("inspect 50");
  }

  @Test
  void theCurveFallsFromCertainAcceptance() {
    Plot plot = Pages.plots(SamplePages.plan(PLAN, 400, List.of())).get(0);
    List<double[]> process = plot.series().get(0).points();
    List<double[]> lot = plot.series().get(1).points();

    assertThat(process.get(0)).containsExactly(0, 100);
    assertThat(process).hasSize(121);
    // The curve ends at half as much again as what passes five times in 100 (9.1 %).
    assertThat(process.get(120)[0]).isCloseTo(13.7, within(0.1));
    for (int i = 1; i < process.size(); i++) {
      assertThat(process.get(i)[1]).isLessThan(process.get(i - 1)[1]);
    }
    assertThat(lot.get(0)).containsExactly(0, 100);
    assertThat(lot.size()).isBetween(20, 41);
    // 4 of 400: hypergeometric, 1 - P(2 or more of 50).
    assertThat(lot)
        .filteredOn(p -> Math.abs(p[0] - 1) < 1e-9)
        .singleElement()
        .satisfies(p -> assertThat(p[1]).isCloseTo(92.7, within(0.5)));
  }

  @Test
  void theWorkSheetTellsNothingOfWhatWasSaidBefore() {
    Page page =
        SamplePages.sheet(
            "the plan",
            PLAN,
            42,
            List.of(
                new Page.Picture(new byte[] {1}, List.of("unit 1")),
                new Page.Picture(new byte[0], List.of("unit 2"))));

    assertThat(page.title()).contains("2 units");
    assertThat(Pages.words(page)).contains("seed 42").contains("the plan");
    assertThat(Pages.pictures(page).get(0).lines())
        .startsWith("unit 1")
        .noneMatch(line -> line.contains("no picture"));
    assertThat(Pages.pictures(page).get(1).lines()).anyMatch(line -> line.contains("no picture"));
    assertThat(Pages.pictures(page)).allMatch(p -> p.lines().size() >= 3);
  }

  @Test
  void theDecisionBeginsWithItsVerdictAndNamesWhatIsNonconforming() {
    LotDecision decision = LotDecision.of(PLAN, 400, new Rate(2, 50));

    Page page = SamplePages.decision(decision, List.of("a note"), List.of("unit 7", "unit 9"));

    assertThat(Pages.strong(page)).isEqualTo(decision.reasons().get(0));
    assertThat(Pages.words(page))
        .contains(decision.reasons())
        .contains("a note")
        .contains("unit 7; unit 9");
    assertThat(Pages.headings(SamplePages.decision(decision, List.of(), List.of()))).isEmpty();
  }

  @Test
  void everyPageSaysThatLeadlightCertifiesNothing() {
    assertThat(Pages.words(SamplePages.plan(PLAN, 400, List.of()))).contains("never certifies");
  }
}
