package leadlight.quality.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.quality.Estimate;
import leadlight.quality.OutsideR;
import org.junit.jupiter.api.Test;

/** Bias and linearity, by hand and beside R (outside.R). */
class BiasTest {

  private static final int[] BOARD = {1, 1, 1, 1, 2, 2, 2, 3, 3, 3, 3, 4, 4, 5, 5, 5};
  private static final double[] KNOWN = {
    .01, .03, .05, .02, .06, .04, .07, .01, .02, .08, .03, .05, .09, .02, .04, .06
  };
  private static final double[] OFF = {
    -.012, -.010, -.011, -.013, .004, .003, .006, -.002, -.004, .001, -.003, .009, .011, -.005,
    -.006, -.002
  };

  /** Sixteen joints; a part's name says whether they lie on five boards or each stands alone. */
  private static Bias joints(String name) {
    return Bias.of(
            IntStream.range(0, BOARD.length)
                .mapToObj(
                    i -> new Bias.Known(name.formatted(BOARD[i], i), KNOWN[i], KNOWN[i] + OFF[i]))
                .toList())
        .orElseThrow();
  }

  private static void assertLikeR(Estimate found, String figure) {
    assertThat(found.value()).isCloseTo(OutsideR.figure(figure, 0), within(1e-12));
    assertThat(found.lower()).isCloseTo(OutsideR.figure(figure, 1), within(1e-9));
    assertThat(found.upper()).isCloseTo(OutsideR.figure(figure, 2), within(1e-9));
  }

  @Test
  void jointsOfOneBoardAreCountedByBoard() {
    Bias found = joints("board %d pin %d");

    assertThat(found.parts()).isEqualTo(16);
    assertThat(found.boards()).isEqualTo(5);
    assertLikeR(found.mean(), "bias by board");
    assertThat(found.p()).isCloseTo(OutsideR.figure("bias by board", 3), within(1e-9));
    assertLikeR(found.slope().orElseThrow(), "slope by board");
  }

  @Test
  void partsThatStandAloneGiveTheTestOfTheirMeanAndPlainRegression() {
    Bias found = joints("coupon %d of %d");

    assertThat(found.boards()).isEqualTo(16);
    assertLikeR(found.mean(), "bias by part");
    assertThat(found.p()).isCloseTo(OutsideR.figure("bias by part", 3), within(1e-9));
    assertLikeR(found.slope().orElseThrow(), "slope by part");
  }

  @Test
  void whatOneBoardMakesIsNoLinearity() {
    assertThat(Bias.isBeyondNone(joints("coupon %d of %d").slope().orElseThrow())).isTrue();
    assertThat(Bias.isBeyondNone(joints("board %d pin %d").slope().orElseThrow())).isFalse();
  }

  @Test
  void linearityNeedsDifferentValuesWhicheverBoardIsLeftOut() {
    List<Bias.Known> readings = new ArrayList<>();
    for (int board = 1; board <= 3; board++) {
      for (int pin = 1; pin <= 2; pin++) {
        double known = board == 1 ? pin : 1;
        readings.add(new Bias.Known("b" + board + " pin " + pin, known, known + .1 * board));
      }
    }

    assertThat(Bias.of(readings).orElseThrow().slope()).isEmpty();
    assertThat(Bias.of(readings.subList(0, 2))).as("one board").isEmpty();
  }

  /** By hand: biases .1, .1, .2, .2 over references 1 to 4: mean .15, slope .04. */
  @Test
  void biasIsByPartAndLinearityItsSlope() {
    List<Bias.Known> readings = new ArrayList<>();
    double[] bias = {.1, .1, .2, .2};
    for (int part = 0; part < 4; part++) {
      for (int trial = 0; trial < 3; trial++) {
        readings.add(new Bias.Known("p" + part, part + 1, part + 1 + bias[part]));
      }
    }
    Bias found = Bias.of(readings).orElseThrow();

    assertThat(found.parts()).isEqualTo(4);
    assertThat(found.mean().value()).isCloseTo(.15, within(1e-12));
    // R: t.test(c(.1,.1,.2,.2)) gives .05813 to .24187, p .01383.
    assertThat(found.mean().lower()).isCloseTo(.0581307, within(1e-6));
    assertThat(found.p()).isCloseTo(.0138, within(1e-3));
    assertThat(found.slope().orElseThrow().value()).isCloseTo(.04, within(1e-12));
    assertThat(Bias.of(readings.subList(0, 3))).as("one part").isEmpty();
  }
}
