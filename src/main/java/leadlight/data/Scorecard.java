package leadlight.data;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leadlight.model.remark.Reason;
import leadlight.numeric.Logistic;

/**
 * Answers one question about a joint, a gap or a leg from its signals: small decision trees each
 * give points, the points are added up, and the sum, squashed by the logistic function, is the
 * chance that the answer is yes (gradient boosting: Friedman 2001, Greedy function approximation,
 * Annals of Statistics 29(5)). The last scaling of the points was fitted on pictures left out
 * (Platt 1999), so that the chance is honest on pictures not seen.
 *
 * @param question what is asked, as "no fillet from the toe to the land"
 * @param intercept points before any tree, log odds
 * @param signals names of the signals that the trees look at
 * @param usual median of each of them over joints where the answer is no
 * @param trees the trees
 */
public record Scorecard(
    @JsonProperty(required = true) String question,
    @JsonProperty(required = true) double intercept,
    @JsonProperty(required = true) List<String> signals,
    @JsonProperty(required = true) double[] usual,
    @JsonProperty(required = true) List<Tree> trees) {

  /** How many signals are named as the reason. */
  private static final int REASONS = 3;

  /** Refuses a card that names a signal without its usual value, and trees that do not end. */
  public Scorecard {
    if (usual.length != signals.size()) {
      throw new IllegalArgumentException("each signal needs its usual value");
    }
    for (Tree tree : trees) {
      tree.check(signals.size());
    }
  }

  /** The chance, 0 to 1. */
  public double chance(ToDoubleFunction<String> joint) {
    return Logistic.of(logOdds(joint));
  }

  /** The sum of the points. */
  public double logOdds(ToDoubleFunction<String> joint) {
    return points(values(joint));
  }

  private double[] values(ToDoubleFunction<String> joint) {
    double[] values = new double[signals.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = joint.applyAsDouble(signals.get(i));
    }
    return values;
  }

  private double points(double[] values) {
    double sum = intercept;
    for (Tree tree : trees) {
      sum += tree.points(values);
    }
    return sum;
  }

  /**
   * The signals that speak loudest for a yes, with their values: those whose usual value in their
   * place would lower the points most.
   */
  public List<Reason> reasons(ToDoubleFunction<String> joint) {
    double[] values = values(joint);
    double points = points(values);
    List<Reason> reasons = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      double value = values[i];
      values[i] = usual[i];
      reasons.add(new Reason(signals.get(i), value, usual[i], points - points(values)));
      values[i] = value;
    }
    reasons.sort(Comparator.comparingDouble((Reason reason) -> -reason.points()));
    return List.copyOf(reasons.subList(0, Math.min(REASONS, reasons.size())));
  }

  /**
   * A decision tree as parallel lists, node 0 the root. A node with signal -1 is a leaf.
   *
   * @param signal which signal a node looks at, index into the card's list
   * @param cut border; a value up to it goes low
   * @param low next node for a value up to the cut
   * @param high next node for a greater value
   * @param value points of a leaf
   */
  public record Tree(
      @JsonProperty(required = true) int[] signal,
      @JsonProperty(required = true) double[] cut,
      @JsonProperty(required = true) int[] low,
      @JsonProperty(required = true) int[] high,
      @JsonProperty(required = true) double[] value) {

    /** Each branch must lead onwards, so that a walk always ends. */
    public void check(int signals) {
      for (int node = 0; node < signal.length; node++) {
        boolean leaf = signal[node] < 0;
        boolean onwards =
            low[node] > node
                && high[node] > node
                && low[node] < signal.length
                && high[node] < signal.length;
        if (!leaf && !(onwards && signal[node] < signals)) {
          throw new IllegalArgumentException("node " + node + " of a tree leads nowhere");
        }
      }
    }

    /** The points of the leaf that some signals lead to. */
    public double points(double[] values) {
      int node = 0;
      while (signal[node] >= 0) {
        node = values[signal[node]] <= cut[node] ? low[node] : high[node];
      }
      return value[node];
    }
  }
}
