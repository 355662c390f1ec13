package leadlight.joint;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.Reason;

/**
 * An additive scorecard: each signal earns points by the interval in which it lies; the sum,
 * squashed by the logistic function, is the chance that the question is answered yes (an additive
 * logistic model fitted by boosting one-split trees: Friedman, Hastie and Tibshirani 2000, Additive
 * logistic regression, Annals of Statistics 28(2)). Additive, so each signal's share in a verdict
 * can be said.
 *
 * @param question what is asked, as "no fillet at the toe"
 * @param intercept points before any signal is looked at, log odds
 * @param terms the signals that count
 */
record Scorecard(
    @JsonProperty(required = true) String question,
    @JsonProperty(required = true) double intercept,
    @JsonProperty(required = true) List<Term> terms) {

  /** How many signals are named as the reason. */
  private static final int REASONS = 3;

  /** The chance, 0 to 1. */
  double chance(Signals signals) {
    double sum = intercept;
    for (Term term : terms) {
      sum += term.pointsFor(signals.get(term.signal));
    }
    return 1 / (1 + Math.exp(-sum));
  }

  /** The signals that speak loudest for a yes, with their values. */
  List<Reason> reasons(Signals signals) {
    return terms.stream()
        .map(term -> term.reason(signals.get(term.signal)))
        .sorted(Comparator.comparingDouble((Reason reason) -> -reason.points()))
        .limit(REASONS)
        .toList();
  }

  /** Reasons as "toe step 0.42 (sound 0.10), ...". */
  static String words(List<Reason> reasons) {
    return reasons.stream()
        .map(
            reason ->
                String.format(
                    Locale.ROOT,
                    "%s %.2f (sound %.2f)",
                    reason.signal().replace('_', ' '),
                    reason.value(),
                    reason.usual()))
        .collect(Collectors.joining(", "));
  }

  /**
   * One signal's points.
   *
   * @param signal name of the signal
   * @param usual median of the signal over sound joints
   * @param usualPoints points that the usual value earns
   * @param cuts ascending borders of the intervals
   * @param points one more than cuts: the points in each interval; a value on a border belongs to
   *     the interval below
   */
  record Term(
      @JsonProperty(required = true) String signal,
      @JsonProperty(required = true) double usual,
      @JsonProperty(required = true) double usualPoints,
      @JsonProperty(required = true) List<Double> cuts,
      @JsonProperty(required = true) List<Double> points) {

    Term {
      if (points.size() != cuts.size() + 1) {
        throw new IllegalArgumentException(
            "signal " + signal + " needs one point value more than cuts");
      }
      for (int i = 1; i < cuts.size(); i++) {
        if (!(cuts.get(i) > cuts.get(i - 1))) {
          throw new IllegalArgumentException("cuts of signal " + signal + " must ascend");
        }
      }
    }

    double pointsFor(double value) {
      int low = 0;
      int high = cuts.size();
      while (low < high) {
        int middle = (low + high) / 2;
        if (value <= cuts.get(middle)) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      return points.get(low);
    }

    Reason reason(double value) {
      return new Reason(signal, value, usual, pointsFor(value) - usualPoints);
    }
  }
}
