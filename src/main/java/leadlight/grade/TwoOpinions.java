package leadlight.grade;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.model.FaultChances;

/**
 * How the measures' and the second reader's chances become one: {@code models/grade/opinions.json}.
 * Both are put on the scale of log odds, each is counted with its weight, and the sum is the log
 * odds of both together (logistic regression on the two, fitted on pictures that neither learned
 * from). So where they agree the common chance is surer than either, and where they differ the one
 * that is surer decides only if it outweighs the other; else the sum stays in the middle, which is
 * a doubt.
 *
 * @param source what the weights were fitted on
 * @param missing for "no lead"
 * @param unwetted for "no fillet"
 * @param excess for "too much"
 * @param bridge for "metal across the gap"
 * @param ball for "a solder ball beside it"
 * @param overhang for "over its land's side", whatever share is asked for
 */
record TwoOpinions(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Weights missing,
    @JsonProperty(required = true) Weights unwetted,
    @JsonProperty(required = true) Weights excess,
    @JsonProperty(required = true) Weights bridge,
    @JsonProperty(required = true) Weights ball,
    @JsonProperty(required = true) Weights overhang) {

  /** No opinion counts as surer than this, in log odds: 400 to 1. */
  private static final double SUREST = 6;

  static TwoOpinions builtIn() {
    return DataFile.builtIn("grade/opinions.json").read(TwoOpinions.class);
  }

  /**
   * Weights of one question.
   *
   * @param measures factor of the measures' log odds
   * @param reader factor of the reader's log odds
   * @param shift added to the sum
   */
  record Weights(
      @JsonProperty(required = true) double measures,
      @JsonProperty(required = true) double reader,
      @JsonProperty(required = true) double shift) {

    double both(double byMeasures, double byReader) {
      double sum = measures * logOdds(byMeasures) + reader * logOdds(byReader) + shift;
      return 1 / (1 + Math.exp(-sum));
    }
  }

  /** Both opinions together. Which name a lack of solder gets is the mean of the two. */
  FaultChances both(FaultChances measures, FaultChances reader) {
    return new FaultChances(
        missing.both(measures.missing(), reader.missing()),
        unwetted.both(measures.unwetted(), reader.unwetted()),
        (measures.open() + reader.open()) / 2,
        excess.both(measures.excess(), reader.excess()),
        bridge.both(measures.bridgeBefore(), reader.bridgeBefore()),
        bridge.both(measures.bridgeAfter(), reader.bridgeAfter()),
        ball.both(measures.ball(), reader.ball()),
        overhang.both(measures.overQuarter(), reader.overQuarter()),
        overhang.both(measures.overHalf(), reader.overHalf()));
  }

  private static double logOdds(double chance) {
    double inside = Math.max(1e-12, Math.min(1 - 1e-12, chance));
    return Math.max(-SUREST, Math.min(SUREST, Math.log(inside / (1 - inside))));
  }
}
