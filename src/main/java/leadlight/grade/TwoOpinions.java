package leadlight.grade;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.numeric.Logistic;

/**
 * How the measures' and the second reader's chances become one: {@code models/grade/opinions.json}.
 * Both are put on the scale of log odds, each is counted with its weight, and the sum is the log
 * odds of both together (logistic regression on the two, fitted on pictures that neither learned
 * from). So where they agree the common chance is surer than either, and where they differ the one
 * that is surer decides only if it outweighs the other; else the sum stays in the middle, which is
 * a doubt.
 *
 * @param source what the weights were fitted on
 * @param weights of each question, by its id
 */
public record TwoOpinions(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Map<String, Weights> weights) {

  /** No opinion counts as surer than this, in log odds: 400 to 1. */
  private static final double SUREST = 6;

  /** Keeps the logarithm of a chance of 0 or 1 finite. */
  private static final double LEAST = 1e-12;

  /** Every question needs weights. */
  public TwoOpinions {
    weights = Map.copyOf(weights);
    for (Question question : Question.values()) {
      if (!weights.containsKey(question.id())) {
        throw new IllegalArgumentException("no weights for " + question.id());
      }
    }
  }

  /** The weights that the program counts with. */
  public static TwoOpinions builtIn() {
    return DataFile.builtIn("grade/opinions.json").read(TwoOpinions.class);
  }

  /**
   * Weights of one question.
   *
   * @param measures factor of the measures' log odds, 0 where they have no skill in it
   * @param reader factor of the reader's log odds
   * @param shift added to the sum
   */
  record Weights(
      @JsonProperty(required = true) double measures,
      @JsonProperty(required = true) double reader,
      @JsonProperty(required = true) double shift) {

    private double both(double byMeasures, double byReader) {
      double sum = measures * logOdds(byMeasures) + reader * logOdds(byReader) + shift;
      return Logistic.of(sum);
    }
  }

  /** Both opinions together. */
  public Chances both(Chances measures, Chances reader) {
    return Chances.of(
        question -> weights.get(question.id()).both(measures.of(question), reader.of(question)));
  }

  /** Whether both opinions on a question carry weight, so that it matters when they differ. */
  boolean bothCount(Question question) {
    Weights of = weights.get(question.id());
    return of.measures() > 0 && of.reader() > 0;
  }

  private static double logOdds(double chance) {
    double inside = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return Math.max(-SUREST, Math.min(SUREST, Math.log(inside / (1 - inside))));
  }
}
