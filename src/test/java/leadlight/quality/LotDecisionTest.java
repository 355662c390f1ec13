package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.quality.SwitchingRules.LotResult;
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
}
