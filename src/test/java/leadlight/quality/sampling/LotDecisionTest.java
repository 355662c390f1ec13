package leadlight.quality.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a sample says of its lot; plans of ISO 2859-1, table 2-A, and one with a gap. */
class LotDecisionTest {

  /** Letter H, AQL 1.0: 50, Ac 1, Re 2; and letter L, AQL 1.0: 200, Ac 5, Re 6. */
  @ParameterizedTest
  @CsvSource({
    "50,1,0,ACCEPTED",
    "50,1,1,ACCEPTED",
    "50,1,2,REFUSED",
    "50,1,50,REFUSED",
    "200,5,5,ACCEPTED",
    "200,5,6,REFUSED"
  })
  void theAcceptanceNumberIsTheLastThatAccepts(int size, int accept, int found, LotResult result) {
    Plan plan = new Plan(size, accept, accept + 1, "ISO 2859-1");
    assertThat(LotDecision.of(plan, 1000, new Rate(found, size)).result()).isEqualTo(result);
  }

  /** Reduced plans of older editions leave a gap between the two numbers. */
  @ParameterizedTest
  @CsvSource({"0,ACCEPTED", "1,ACCEPTED_ENDS_REDUCED", "2,REFUSED"})
  void betweenTheNumbersTheLotPassesAndReducedInspectionEnds(int found, LotResult result) {
    Plan reduced = new Plan(20, 0, 2, "reduced");
    assertThat(LotDecision.of(reduced, 400, new Rate(found, 20)).result()).isEqualTo(result);
  }

  @Test
  void eachResultIsToldApartAndTheFirstReasonIsTheVerdict() {
    Plan reduced = new Plan(20, 0, 2, "reduced");
    List<String> verdicts =
        IntStream.range(0, 3)
            .mapToObj(found -> LotDecision.of(reduced, 400, new Rate(found, 20)).reasons().get(0))
            .toList();

    assertThat(verdicts).doesNotHaveDuplicates();
    assertThat(verdicts.get(0)).contains("accepted").doesNotContain("normal");
    assertThat(verdicts.get(1)).contains("accepted").contains("normal inspection");
    assertThat(verdicts.get(2)).contains("refused");
  }

  /** ISO 2859-1, tables 5 and 6, 50/1: 0.715 % passes 95 times in 100, 7.56 % ten times. */
  @Test
  void theReasonsSayWhatThePlanCanTell() {
    LotDecision decision = LotDecision.of(new Plan(50, 1, 2, "ISO 2859-1"), 400, new Rate(1, 50));
    String reasons = String.join(" ", decision.reasons());

    assertThat(reasons).contains("1 nonconforming in 50").contains("0.7 %").contains("7.6 %");
    assertThat(reasons).as("Wilson interval of 1 in 50").contains("0.4 to 10.5 %");
  }

  @ParameterizedTest
  @CsvSource({"49,true", "50,true", "51,false"})
  void aLotInspectedWholeHasNoInterval(int lot, boolean whole) {
    LotDecision decision = LotDecision.of(new Plan(50, 1, 2, "x"), lot, new Rate(1, 50));
    String reasons = String.join(" ", decision.reasons());

    assertThat(reasons.contains("whole lot")).isEqualTo(whole);
    assertThat(reasons.contains("Wilson")).isNotEqualTo(whole);
  }

  @Test
  void anotherNumberThanThePlansIsNoSample() {
    Plan plan = new Plan(50, 1, 2, "x");
    assertThatThrownBy(() -> LotDecision.of(plan, 400, new Rate(0, 49)))
        .hasMessageContaining("49")
        .hasMessageContaining("50");
  }

  @ParameterizedTest
  @CsvSource({"0,0,1", "5,-1,1", "5,1,1", "5,2,1"})
  void aPlanThatCannotBeCarriedOutIsNone(int size, int accept, int refuse) {
    assertThatThrownBy(() -> new Plan(size, accept, refuse, "x"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aPlanOfOneUnitCanBeCarriedOutAndSaysItsNumbers() {
    assertThat(new Plan(1, 0, 1, "x").words()).contains("inspect 1").contains("1 or more");
    assertThat(new Plan(50, 1, 2, "x").words()).contains("1 or fewer").contains("2 or more");
  }

  @Test
  void aDrawIsRandomRepeatableAndWithoutRepeats() {
    List<Integer> lot = IntStream.range(0, 500).boxed().toList();

    List<Integer> drawn = Draw.of(lot, 50, 7);

    assertThat(drawn).hasSize(50).doesNotHaveDuplicates().isSubsetOf(lot);
    assertThat(Draw.of(lot, 50, 7)).isEqualTo(drawn);
    assertThat(Draw.of(lot, 50, 8)).isNotEqualTo(drawn);
    assertThat(drawn)
        .as("in no order that tells anything")
        .isNotEqualTo(drawn.stream().sorted().toList());
  }

  @Test
  void aWholeLotCanBeDrawnButNotMore() {
    List<Integer> lot = List.of(1, 2, 3);
    assertThat(Draw.of(lot, 3, 1)).containsExactlyInAnyOrder(1, 2, 3);
    assertThatThrownBy(() -> Draw.of(lot, 4, 1))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("4")
        .hasMessageContaining("3");
  }

  /** ISO 2859-1, letter J, AQL 1.0, double: 50, 0 and 3; 50 more, 3 and 4. */
  @ParameterizedTest
  @CsvSource({"50,0,ACCEPTED", "50,3,REFUSED", "100,1,ACCEPTED", "100,3,ACCEPTED", "100,4,REFUSED"})
  void aDoublePlanDecidesAtEitherSample(int inspected, int found, LotResult result) {
    LotDecision decision = LotDecision.of(TWO, 600, new Rate(found, inspected));

    assertThat(decision.result()).isEqualTo(result);
    assertThat(String.join(" ", decision.reasons()))
        .contains("no interval is given")
        .contains(inspected == 50 ? "first sample of 50" : "both samples, 100 units")
        .doesNotContain("Wilson");
  }

  private static final DoublePlan TWO = new DoublePlan(50, 0, 3, 50, 3, "double");

  @Test
  void betweenItsNumbersTheFirstSampleDoesNotDecide() {
    assertThat(TWO.after(50, 1)).isEmpty();
    assertThat(TWO.after(50, 2)).isEmpty();
    assertThat(TWO.nextStop(0)).isEqualTo(50);
    assertThat(TWO.nextStop(50)).isEqualTo(100);
    assertThatThrownBy(() -> LotDecision.of(TWO, 600, new Rate(1, 50)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("goes on");
    assertThatThrownBy(() -> TWO.after(60, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * Carried out unit by unit, each plan accepts as often, after as many units, as its curve says.
   */
  @ParameterizedTest
  @CsvSource({"0.01", "0.03", "0.06"})
  void carriedOutAPlanDoesWhatItsCurveSays(double share) {
    SequentialPlan each = new SequentialPlan(0.01, 0.05, 0.06, 0.10);
    assertThat(walked(TWO, share)[0]).isCloseTo(TWO.accepts(share), within(0.01));
    assertThat(walked(TWO, share)[1]).isCloseTo(TWO.sampleNumber(share), within(0.5));
    assertThat(walked(each, share)[0]).isCloseTo(each.accepts(share), within(0.01));
    assertThat(walked(each, share)[1]).isCloseTo(each.course(share).sampleNumber(), within(0.5));
  }

  private static double[] walked(Inspection plan, double share) {
    int lots = 20_000;
    Random random = new Random(1);
    int accepted = 0;
    long units = 0;
    for (int lot = 0; lot < lots; lot++) {
      int inspected = 0;
      int bad = 0;
      Optional<LotResult> result = Optional.empty();
      while (result.isEmpty()) {
        int stop = plan.nextStop(inspected);
        for (; inspected < stop; inspected++) {
          bad += random.nextDouble() < share ? 1 : 0;
        }
        result = plan.after(inspected, bad);
      }
      accepted += result.get() == LotResult.ACCEPTED ? 1 : 0;
      units += inspected;
    }
    return new double[] {(double) accepted / lots, (double) units / lots};
  }

  @Test
  void aSequentialPlanNeedsASecondLookOnlyWhereItGoesOn() {
    SequentialPlan each = new SequentialPlan(0.01, 0.05, 0.06, 0.10);

    assertThat(each.after(43, 0)).isEmpty();
    assertThat(each.after(44, 0)).contains(LotResult.ACCEPTED);
    assertThat(each.after(1, 1)).isEmpty();
    assertThat(each.after(2, 2)).contains(LotResult.REFUSED);
    assertThat(each.after(each.units(), each.acceptAt(each.end()) + 1)).contains(LotResult.REFUSED);
    assertThat(each.nextStop(7)).isEqualTo(8);
    assertThat(each.qualityAt(0.10)).isBetween(0.059, 0.062);
  }
}
