package leadlight.quality.bench;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.quality.Words;
import leadlight.statistics.ClusterRate;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * When the tool is to be trusted no longer on a bench: {@code models/quality/trust.json}.
 *
 * @param mostMissed most share of bad joints that it may pass
 * @param mostMissedSource where from
 * @param mostFalse most share of its calls that the bench may refute
 * @param mostFalseSource where from
 * @param leastBad fewer bad joints tell nothing
 * @param leastBadSource where from
 * @param leastPassedTried fewer passed joints that were tried tell nothing of those that pass
 * @param leastPassedTriedSource where from
 */
record Trust(
    @JsonProperty(required = true) double mostMissed,
    @JsonProperty(required = true) String mostMissedSource,
    @JsonProperty(required = true) double mostFalse,
    @JsonProperty(required = true) String mostFalseSource,
    @JsonProperty(required = true) int leastBad,
    @JsonProperty(required = true) String leastBadSource,
    @JsonProperty(required = true) int leastPassedTried,
    @JsonProperty(required = true) String leastPassedTriedSource) {

  static Trust builtIn() {
    return DataFile.builtIn("quality/trust.json").read(Trust.class);
  }

  /** What to do, in a sentence. */
  String verdict(BenchTally tally) {
    ClusterRate missed = tally.missed();
    double atLeast = surely(missed);
    if (atLeast > mostMissed) {
      return "Do not trust a passed joint on this bench any longer: of joints that the bench found bad"
          + " at least %s had passed, more than %s. Settle every joint by hand and find the cause."
              .formatted(Words.percent(atLeast), Words.percent(mostMissed));
    }
    ClusterRate called = tally.badOfCalled();
    if (called.of() > 0 && 1 - called.upper() > mostFalse) {
      return "Do not heat a joint on the tool's word alone: the bench refutes at least %s of its calls, more than %s."
          .formatted(Words.percent(1 - called.upper()), Words.percent(mostFalse));
    }
    if (missed.of() < leastBad || missed.upper() > mostMissed) {
      return "Not known yet: %d of %d joints that the bench found bad had passed; that tells no miss rate of %s or less. Try passed joints too, drawn at random."
          .formatted(missed.count(), missed.of(), Words.percent(mostMissed));
    }
    int passed = tally.passedTried().count();
    if (passed < leastPassedTried) {
      return "Not known yet: %d passed joints were tried at the bench, fewer than %d; what is missed lies among them. Try passed joints too, drawn at random."
          .formatted(passed, leastPassedTried);
    }
    if (called.of() == 0 || 1 - called.lower() > mostFalse) {
      return "Not known yet: %d calls were settled at the bench; that tells no share of false ones of %s or less. Settle what the tool calls before it is heated."
          .formatted(called.of(), Words.percent(mostFalse));
    }
    return "Nothing here speaks against the tool: at most %s of the bad joints that were tried had passed, and at most %s of its calls were false."
        .formatted(Words.percent(missed.upper()), Words.percent(1 - called.lower()));
  }

  /**
   * Lower end of the exact 95 % interval (Clopper and Pearson 1934) at the effective number: of one
   * or two joints Wilson's, which is printed, claims more than they can prove.
   */
  private static double surely(ClusterRate rate) {
    if (rate.count() == 0) {
      return 0;
    }
    double found = rate.count() / rate.designEffect();
    double others = (rate.of() - rate.count()) / rate.designEffect();
    return BetaDistribution.of(found, others + 1).inverseCumulativeProbability(0.025);
  }
}
