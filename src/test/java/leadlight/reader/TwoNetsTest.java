package leadlight.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.data.Figure;
import leadlight.model.Chances;
import leadlight.model.Question;
import org.junit.jupiter.api.Test;

class TwoNetsTest {

  private static final TwoNets RULE =
      new TwoNets(new Figure(0.05, "a test"), new Figure(0.9, "a test"));

  private static Chances unwetted(double chance) {
    return Chances.of(question -> question == Question.UNWETTED ? chance : 0.001);
  }

  private static List<Double> both(List<Double> alone, List<Double> beside) {
    return RULE
        .both(
            alone.stream().map(TwoNetsTest::unwetted).toList(),
            beside.stream().map(TwoNetsTest::unwetted).toList())
        .stream()
        .map(it -> it.of(Question.UNWETTED))
        .toList();
  }

  /** Odds of 99 to 1 and of 1 to 9 have a geometric mean of the root of 11. */
  @Test
  void inARowThatIsSurelySolderedBothCount() {
    double odds = Math.sqrt(11);
    assertThat(both(List.of(0.01, 0.01, 0.99), List.of(0.01, 0.01, 0.1)).get(2))
        .isCloseTo(odds / (1 + odds), within(1e-9));
  }

  @Test
  void inARowThatIsSurelyBadLikenessProvesNothing() {
    assertThat(both(List.of(0.01, 0.9, 0.99), List.of(0.001, 0.001, 0.001)))
        .containsExactly(0.01, 0.9, 0.99);
  }

  @Test
  void betweenTheTwoNoDoubtIsTakenAway() {
    assertThat(both(List.of(0.01, 0.05, 0.4), List.of(0.9, 0.001, 0.001)))
        .containsExactly(0.01, 0.05, 0.4);
  }

  /** Odds of 99 to 1 and 1 to 99 meet at one half; of 99 to 1 twice they stay what they are. */
  @Test
  void butACallOfTheFirstNeedsTheSecond() {
    List<Double> joined =
        both(List.of(0.3, 0.3, 0.3, 0.99, 0.99), List.of(0.1, 0.1, 0.1, 0.01, 0.99));
    assertThat(joined.get(3)).isCloseTo(0.5, within(1e-9));
    assertThat(joined.get(4)).isCloseTo(0.99, within(1e-9));
    assertThat(both(List.of(0.3, 0.3, 0.99), List.of(0.1, 0.1, 0.0001)).get(2)).isEqualTo(0.5);
  }

  /** Odds of 9 to 1 and 1 to 1 have a geometric mean of 3 to 1. */
  @Test
  void onTheNameOfALackBothCountInAnyRow() {
    Chances one = unwetted(0.99).with(Question.OPEN, 0.9);
    Chances other = unwetted(0.01).with(Question.OPEN, 0.5);
    List<Chances> both = RULE.both(List.of(one, one, one), List.of(other, other, other));
    assertThat(both.get(0).of(Question.OPEN)).isCloseTo(0.75, within(1e-9));
    assertThat(both.get(0).of(Question.UNWETTED)).isEqualTo(0.99);
  }

  @Test
  void aRowOfBareLandsIsNotSurelySolderedEither() {
    Chances bare = Chances.of(question -> question == Question.MISSING ? 0.9 : 0.001);
    List<Chances> alone = List.of(bare, bare, bare);
    assertThat(RULE.both(alone, List.of(unwetted(0.001), unwetted(0.001), unwetted(0.001))))
        .allSatisfy(it -> assertThat(it.of(Question.MISSING)).isEqualTo(0.9));
  }
}
