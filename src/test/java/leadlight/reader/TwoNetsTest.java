package leadlight.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.data.Figure;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import org.junit.jupiter.api.Test;

class TwoNetsTest {

  private static final TwoNets RULE = new TwoNets(new Figure(0.9, "a test"));

  private static Chances unwetted(double chance) {
    return Chances.of(question -> question == Question.UNWETTED ? chance : 0.001);
  }

  private static List<Double> both(List<Double> inRow, List<Double> beside) {
    return RULE
        .both(
            inRow.stream().map(TwoNetsTest::unwetted).toList(),
            beside.stream().map(TwoNetsTest::unwetted).toList())
        .stream()
        .map(it -> it.of(Question.UNWETTED))
        .toList();
  }

  @Test
  void inARowThatIsBadThroughoutLikenessProvesNothing() {
    assertThat(both(List.of(0.01, 0.9, 0.99), List.of(0.001, 0.001, 0.001)))
        .containsExactly(0.01, 0.9, 0.99);
  }

  @Test
  void noDoubtIsTakenAwayAndNoneAdded() {
    assertThat(both(List.of(0.01, 0.05, 0.4), List.of(0.9, 0.001, 0.001)))
        .containsExactly(0.01, 0.05, 0.4);
  }

  /** Odds of 99 to 1 and 1 to 99 meet at one half; of 99 to 1 twice they stay what they are. */
  @Test
  void butACallNeedsTheOneThatCompares() {
    List<Double> joined =
        both(List.of(0.3, 0.3, 0.3, 0.99, 0.99), List.of(0.1, 0.1, 0.1, 0.01, 0.99));
    assertThat(joined.get(3)).isCloseTo(0.5, within(1e-9));
    assertThat(joined.get(4)).isCloseTo(0.99, within(1e-9));
    assertThat(both(List.of(0.3, 0.3, 0.99), List.of(0.1, 0.1, 0.0001)).get(2)).isEqualTo(0.5);
  }

  @Test
  void whichNameALackGetsIsNoCall() {
    Chances one = unwetted(0.6).with(Question.OPEN, 0.9);
    Chances other = unwetted(0.01).with(Question.OPEN, 0.1);
    List<Chances> both = RULE.both(List.of(one, one, one), List.of(other, other, other));
    assertThat(both.get(0).of(Question.OPEN)).isEqualTo(0.9);
  }

  @Test
  void aRowOfBareLandsIsBadThroughout() {
    Chances bare = Chances.of(question -> question == Question.MISSING ? 0.9 : 0.001);
    List<Chances> inRow = List.of(bare, bare, bare);
    assertThat(RULE.both(inRow, List.of(unwetted(0.001), unwetted(0.001), unwetted(0.001))))
        .allSatisfy(it -> assertThat(it.of(Question.MISSING)).isEqualTo(0.9));
  }
}
