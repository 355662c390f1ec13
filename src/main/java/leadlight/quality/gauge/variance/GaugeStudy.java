package leadlight.quality.gauge.variance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A gauge study of one measure by both methods.
 *
 * @param data the readings
 * @param averageRange by averages and ranges; empty beyond the reach of its constants
 * @param anova by analysis of variance
 */
public record GaugeStudy(GaugeData data, Optional<Spread> averageRange, GaugeAnova anova) {

  /** Computes both. */
  public static GaugeStudy of(GaugeData data) {
    GaugeRules rules = GaugeRules.builtIn();
    return new GaugeStudy(data, AverageRange.of(data, rules), GaugeAnova.of(data, rules));
  }

  /** The average and range method (AIAG MSA, 4th edition). It does not see the interaction. */
  private static final class AverageRange {

    /** Below this share of the means a range of means is rounding. */
    private static final double ROUNDING = 1e-12;

    private AverageRange() {}

    /** The spread; empty for more parts, operators or trials than the constants reach. */
    static Optional<Spread> of(GaugeData data, GaugeRules rules) {
      int parts = data.parts().size();
      int operators = data.operators().size();
      if (parts - 2 >= rules.k3ByParts().size()
          || operators - 2 >= rules.k2ByOperators().size()
          || data.trials() - 2 >= rules.k1ByTrials().size()) {
        return Optional.empty();
      }
      double equipment = meanRange(data) * rules.k1ByTrials().get(data.trials() - 2);
      double between =
          range(operators, data::operatorMean) * rules.k2ByOperators().get(operators - 2);
      double share = equipment * equipment / parts / data.trials();
      double appraisers = Math.sqrt(Math.max(0, between * between - share));
      double partToPart = range(parts, data::partMean) * rules.k3ByParts().get(parts - 2);
      return Optional.of(new Spread(equipment, appraisers, partToPart));
    }

    private static double meanRange(GaugeData data) {
      List<Double> ranges = new ArrayList<>();
      data.values()
          .forEach(part -> part.forEach(c -> ranges.add(Collections.max(c) - Collections.min(c))));
      return ranges.stream().mapToDouble(r -> r).average().orElseThrow();
    }

    private static double range(int count, IntToDoubleFunction mean) {
      double[] means = IntStream.range(0, count).mapToDouble(mean).sorted().toArray();
      double range = means[count - 1] - means[0];
      double size = Math.max(Math.abs(means[0]), Math.abs(means[count - 1]));
      return range > ROUNDING * size ? range : 0;
    }
  }
}
