package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class TwoOpinionsTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-12);

  private static TwoOpinions weighing(double measures, double reader, double shift) {
    Map<String, TwoOpinions.Weights> weights = new HashMap<>();
    for (Question question : Question.values()) {
      weights.put(question.id(), new TwoOpinions.Weights(measures, reader, shift));
    }
    return new TwoOpinions("even", weights);
  }

  private static double both(double measures, double reader) {
    Chances one = Chances.of(question -> measures);
    return weighing(1, 1, 0).both(one, Chances.of(q -> reader)).of(Question.BALL);
  }

  /** Odds of 9 to 1 twice are odds of 81 to 1: Bayes' rule for independent evidence. */
  @Test
  void agreementIsSurerThanEitherOpinion() {
    assertThat(both(0.9, 0.9)).isEqualTo(81 / 82.0, CLOSE);
    assertThat(both(0.1, 0.1)).isEqualTo(1 / 82.0, CLOSE);
  }

  @Test
  void equalAndOppositeOpinionsAreADoubt() {
    assertThat(both(0.9, 0.1)).isEqualTo(0.5, CLOSE);
  }

  /** 99 to 1 against 1 to 9 leaves 11 to 1. */
  @Test
  void theStrongerOpinionDecidesByWhatItOutweighs() {
    assertThat(both(0.99, 0.1)).isEqualTo(11 / 12.0, CLOSE);
    assertThat(both(0.1, 0.99)).isEqualTo(11 / 12.0, CLOSE);
  }

  /** Log odds of 6, not more, against -4.595 (1 to 99): 1 / (1 + exp(-1.405)). */
  @Test
  void certaintyIsCappedSoThatNoOpinionIsDeaf() {
    assertThat(both(1, 0.01)).isEqualTo(1 / (1 + Math.exp(-(6 - Math.log(99)))), CLOSE);
    assertThat(both(0, 0.99)).isEqualTo(1 / (1 + Math.exp(6 - Math.log(99))), CLOSE);
  }

  /** Twice the measures' odds of 4 to 1 are 16 to 1, half the reader's 9 to 1 are 3 to 1. */
  @Test
  void eachOpinionCountsByItsWeightAndTheShiftIsAdded() {
    double odds = 16 * 3 * Math.exp(1);
    Chances four = Chances.of(question -> 0.8);
    Chances nine = Chances.of(question -> 0.9);
    assertThat(weighing(2, 0.5, 1).both(four, nine).of(Question.MISSING))
        .isEqualTo(odds / (1 + odds), CLOSE);
  }

  @Test
  void anOpinionWithoutWeightIsNoPartner() {
    assertThat(weighing(1, 1, 0).bothCount(Question.EXCESS)).isTrue();
    assertThat(weighing(0, 1, 0).bothCount(Question.EXCESS)).isFalse();
    assertThat(weighing(1, 0, 0).bothCount(Question.EXCESS)).isFalse();
  }

  @Test
  void aQuestionWithoutWeightsIsRefused() {
    assertThatThrownBy(() -> new TwoOpinions("none", Map.of()))
        .hasMessageContaining("no weights for missing");
  }

  @Test
  void inTheShippedWeightsMoreChanceNeverMeansLess() {
    TwoOpinions shipped = TwoOpinions.builtIn();
    for (Question question : Question.values()) {
      TwoOpinions.Weights weights = shipped.weights().get(question.id());
      assertThat(weights.measures()).as(question.id()).isNotNegative();
      assertThat(weights.reader()).as(question.id()).isPositive();
    }
  }
}
