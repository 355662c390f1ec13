package leadlight.quality;

import java.util.Optional;

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
}
