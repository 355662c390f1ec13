package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.quality.agreement.Pages;
import leadlight.quality.gauge.Drift;
import leadlight.quality.gauge.Flips;
import leadlight.quality.gauge.GaugeInput;
import leadlight.quality.gauge.GaugePages;
import leadlight.quality.gauge.variance.GaugeAnova;
import leadlight.quality.gauge.variance.GaugeData;
import leadlight.quality.gauge.variance.GaugeStudy;
import leadlight.quality.gauge.variance.Spread;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;

/** AIAG MSA, 4th edition, gage R&amp;R: 10 parts, 3 operators, 3 trials, by both methods. */
class GaugeTest {

  private static List<GaugeData.Reading> aiag() {
    return Table.read(Outside.FOLDER.resolve("aiag-gauge.csv"), "part").rows().stream()
        .map(r -> new GaugeData.Reading(r.text("part"), r.text("operator"), r.number("value")))
        .toList();
  }

  @Test
  void averageAndRange() {
    Spread spread = GaugeStudy.of(GaugeData.of(aiag())).averageRange().orElseThrow();

    assertThat(spread.equipment()).isCloseTo(.20186, within(2e-5));
    assertThat(spread.operators()).isCloseTo(.22967, within(2e-5));
    assertThat(spread.gauge()).isCloseTo(.30577, within(2e-5));
    assertThat(spread.parts()).isCloseTo(1.10460, within(1e-4));
    assertThat(spread.total()).isCloseTo(1.14613, within(1e-4));
    assertThat(100 * spread.gaugeShare().orElseThrow()).isCloseTo(26.68, within(.005));
    assertThat(spread.categories()).contains(5);
  }

  @Test
  void analysisOfVariance() {
    GaugeAnova anova = GaugeStudy.of(GaugeData.of(aiag())).anova();

    assertThat(anova.operators()).isCloseTo(3.1673, within(5e-5));
    assertThat(anova.parts()).isCloseTo(88.3619, within(5e-5));
    assertThat(anova.interaction()).isCloseTo(.3590, within(5e-5));
    assertThat(anova.repeats()).isCloseTo(2.7589, within(5e-5));
    assertThat(anova.operators()).isCloseTo(Outside.figure("gauge sums", 0), within(1e-9));
    assertThat(anova.parts()).isCloseTo(Outside.figure("gauge sums", 1), within(1e-9));
    assertThat(anova.interaction()).isCloseTo(Outside.figure("gauge sums", 2), within(1e-9));
    assertThat(anova.repeats()).isCloseTo(Outside.figure("gauge sums", 3), within(1e-9));
    assertThat(anova.interactionP().orElseThrow())
        .isCloseTo(Outside.figure("gauge interaction p"), within(1e-9));
    assertThat(anova.pooled()).isTrue();
    assertThat(100 * anova.spread().gaugeShare().orElseThrow()).isCloseTo(27.9, within(.05));
  }

  @Test
  void aMissingReadingIsNamed() {
    List<GaugeData.Reading> readings = new ArrayList<>(aiag());
    readings.remove(0);

    assertThatThrownBy(() -> GaugeData.of(readings))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("part 1, operator A has 2 of 3");
    assertThat(GaugeData.of(GaugeData.complete(readings)).parts()).hasSize(9).doesNotContain("1");
  }

  @Test
  void withoutAnyVariationThereIsNoShareAndNoNumberInItsPlace() {
    List<GaugeData.Reading> same =
        aiag().stream().map(r -> new GaugeData.Reading(r.part(), r.operator(), 0.1)).toList();
    GaugeStudy study = GaugeStudy.of(GaugeData.of(same));

    assertThat(study.anova().spread().gaugeShare()).isEmpty();
    assertThat(study.anova().spread().categories()).isEmpty();
    assertThat(study.anova().interactionP()).isEmpty();
    assertThat(study.averageRange().orElseThrow().total()).isZero();
  }

  @Test
  void driftIsTheSlopeWithinParts() {
    double[] days = {0, 3, 9, 1, 4, 8, 0, 5, 9};
    double[] values = {1.0, 1.3, 1.6, 5.0, 5.4, 5.5, 3.1, 3.2, 3.9};
    List<Drift.Dated> readings = new ArrayList<>();
    for (int i = 0; i < days.length; i++) {
      readings.add(new Drift.Dated("abc".substring(i / 3, i / 3 + 1), days[i], values[i]));
    }
    Drift drift = Drift.of(readings).orElseThrow();

    assertThat(drift.perDay().value()).isCloseTo(Outside.figure("drift", 0), within(1e-12));
    assertThat(drift.perDay().lower()).isCloseTo(Outside.figure("drift", 1), within(1e-9));
    assertThat(drift.perDay().upper()).isCloseTo(Outside.figure("drift", 2), within(1e-9));
    assertThat(drift.p()).isCloseTo(Outside.figure("drift", 3), within(1e-9));
  }

  @Test
  void oneDayHasNoDrift() {
    assertThat(Drift.of(List.of(new Drift.Dated("a", 1, 1), new Drift.Dated("a", 1, 2)))).isEmpty();
  }

  @Test
  void aVerdictThatChangesIsAFlip() {
    Flips flips =
        Flips.of(
            List.of(
                new Flips.Said("a", "ring", "defect"),
                new Flips.Said("a", "ring", "defect"),
                new Flips.Said("a", "dome", "unjudged"),
                new Flips.Said("b", "ring", "acceptable"),
                new Flips.Said("b", "dome", "acceptable")),
            Set.of("unjudged"));

    assertThat(flips.parts()).containsEntry("a", new Rate(1, 3)).containsEntry("b", new Rate(0, 2));
    assertThat(flips.operators().get("ring").plain()).isEqualTo(new Rate(0, 3));
    assertThat(flips.operators().get("dome").plain()).isEqualTo(new Rate(1, 2));
    assertThat(flips.undecided()).containsEntry("a", new Rate(1, 3));
    assertThat(flips.flipping().plain()).isEqualTo(new Rate(1, 2));
    assertThat(flips.verdicts().plain()).isEqualTo(new Rate(1, 5));
    assertThat(flips.verdicts().clusters()).as("by part").isEqualTo(2);
  }

  @Test
  void aBlurredPhotoThatChangesAllJointsOfABoardIsOneBoardsWord() {
    List<Flips.Said> verdicts = new ArrayList<>();
    for (int joint = 0; joint < 30; joint++) {
      String part = "board " + (1 + joint / 10) + " pin " + (1 + joint % 10);
      for (int trial = 0; trial < 3; trial++) {
        boolean blurred = joint < 10 && trial == 2;
        verdicts.add(new Flips.Said(part, "dome", blurred ? "unjudged" : "acceptable"));
      }
    }
    Flips flips = Flips.of(verdicts, Set.of("unjudged"));

    assertThat(flips.flipping().plain()).isEqualTo(new Rate(10, 30));
    assertThat(flips.flipping().clusters()).isEqualTo(3);
    assertThat(flips.flipping().upper())
        .as("Wilson, 1 of 3 boards, by hand 79 %; 10 of 30 joints 51 %")
        .isGreaterThanOrEqualTo(0.79);
    assertThat(flips.operators().get("dome").clusters()).isEqualTo(3);
  }

  /**
   * Two parts that two operators read the other way round, by hand: cells 0, 2 / 2, 0, repeats 0.1
   * off. Sum of squares of the interaction 8 with one degree of freedom, of the repeats 0.08 with
   * four; F 400, so it is kept, and (8 - 0.02) / 2 is its variance.
   */
  @Test
  void anInteractionThatShowsIsKeptAndCountsAsReproducibility() {
    List<GaugeData.Reading> readings = new ArrayList<>();
    for (double off : new double[] {-0.1, 0.1}) {
      readings.add(new GaugeData.Reading("p", "a", 0 + off));
      readings.add(new GaugeData.Reading("p", "b", 2 + off));
      readings.add(new GaugeData.Reading("q", "a", 2 + off));
      readings.add(new GaugeData.Reading("q", "b", 0 + off));
    }
    GaugeAnova anova = GaugeStudy.of(GaugeData.of(readings)).anova();

    assertThat(anova.pooled()).isFalse();
    assertThat(anova.interaction()).isCloseTo(8, within(1e-9));
    assertThat(anova.repeats()).isCloseTo(0.08, within(1e-9));
    assertThat(anova.spread().equipment()).isCloseTo(Math.sqrt(0.02), within(1e-9));
    assertThat(anova.spread().operators()).isCloseTo(Math.sqrt(3.99), within(1e-9));
    assertThat(anova.spread().parts()).isZero();
    Page page =
        GaugePages.page(
            new GaugeInput(
                readings.stream()
                    .map(
                        r ->
                            new GaugeInput.Measured(
                                r.part(),
                                r.operator(),
                                java.util.OptionalDouble.empty(),
                                "x_mm",
                                r.value()))
                    .toList(),
                List.of()),
            List.of(),
            Set.of(),
            "operator");
    assertThat(Pages.words(page)).contains("kept").doesNotContain("pooled with");
  }
}
