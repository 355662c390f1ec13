package leadlight.quality.gauge.variance;

import java.util.Optional;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Two-way crossed analysis of variance with repeats, both factors random (AIAG MSA, 4th edition).
 *
 * @param parts sum of squares between parts
 * @param operators between operators
 * @param interaction of both
 * @param repeats within cells
 * @param interactionP significance of the interaction; empty if repeats do not vary at all
 * @param pooled true if the interaction went into the repeats
 * @param spread standard deviations; negative variance components are 0
 */
public record GaugeAnova(
    double parts,
    double operators,
    double interaction,
    double repeats,
    Optional<Double> interactionP,
    boolean pooled,
    Spread spread) {

  /** Below this share of the readings' own squares a sum of squares is rounding. */
  private static final double ROUNDING = 1e-24;

  static GaugeAnova of(GaugeData data, GaugeRules rules) {
    int p = data.parts().size();
    int o = data.operators().size();
    int t = data.trials();
    double all = data.mean();
    double parts = 0;
    double operators = 0;
    double cells = 0;
    double repeats = 0;
    double readings = 0;
    for (int j = 0; j < o; j++) {
      operators += p * t * square(data.operatorMean(j) - all);
    }
    for (int i = 0; i < p; i++) {
      parts += o * t * square(data.partMean(i) - all);
      for (int j = 0; j < o; j++) {
        double mean = data.cellMean(i, j);
        cells += t * square(mean - all);
        readings += data.values().get(i).get(j).stream().mapToDouble(GaugeAnova::square).sum();
        repeats += data.values().get(i).get(j).stream().mapToDouble(v -> square(v - mean)).sum();
      }
    }
    double least = ROUNDING * readings;
    double interaction = Math.max(0, cells - parts - operators);
    return of(
        floor(parts, least),
        floor(operators, least),
        floor(interaction, least),
        floor(repeats, least),
        new int[] {p, o, t},
        rules);
  }

  private static double floor(double sum, double least) {
    return sum > least ? sum : 0;
  }

  private static double square(double x) {
    return x * x;
  }

  private static GaugeAnova of(
      double parts,
      double operators,
      double interaction,
      double repeats,
      int[] sizes,
      GaugeRules rules) {
    int p = sizes[0];
    int o = sizes[1];
    int t = sizes[2];
    double freeInteraction = (p - 1.0) * (o - 1);
    double freeRepeats = (double) p * o * (t - 1);
    double meanInteraction = interaction / freeInteraction;
    Optional<Double> significance =
        repeats > 0
            ? Optional.of(
                FDistribution.of(freeInteraction, freeRepeats)
                    .survivalProbability(meanInteraction / (repeats / freeRepeats)))
            : Optional.empty();
    boolean pooled = significance.map(s -> s > rules.poolAboveP()).orElse(interaction == 0);
    double error =
        pooled ? (interaction + repeats) / (freeInteraction + freeRepeats) : repeats / freeRepeats;
    double against = pooled ? error : meanInteraction;
    double crossed = pooled ? 0 : Math.max(0, (meanInteraction - error) / t);
    double byOperator = Math.max(0, (operators / (o - 1) - against) / p / t);
    double byPart = Math.max(0, (parts / (p - 1) - against) / o / t);
    Spread spread =
        new Spread(Math.sqrt(error), Math.sqrt(byOperator + crossed), Math.sqrt(byPart));
    return new GaugeAnova(parts, operators, interaction, repeats, significance, pooled, spread);
  }
}
