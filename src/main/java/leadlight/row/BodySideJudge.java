package leadlight.row;

/** Which side the body is on: a logistic sum of the cues. */
final class BodySideJudge {

  private final double[] weights;

  BodySideJudge(double[] weights) {
    this.weights = weights;
  }

  /** Probability that the body lies on the strip's upper side. */
  double upper(double[] cues) {
    return 1 / (1 + Math.exp(-LeastSquares.dot(weights, cues)));
  }
}
