package leadlight.quality.bench;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.quality.Words;
import leadlight.statistics.ClusterRate;

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
    if (missed.of() > 0 && missed.lower() > mostMissed) {
      return "Do not trust a passed joint on this bench any longer: of joints that the bench found bad"
          + " at least %s had passed, more than %s. Settle every joint by hand and find the cause."
              .formatted(Words.percent(missed.lower()), Words.percent(mostMissed));
    }
    ClusterRate called = tally.badOfCalled();
    if (called.of() > 0 && 1 - called.upper() > mostFalse) {
      return "Do not heat a joint on the tool's word alone: the bench refutes at least %s of its calls, more than %s."
          .formatted(Words.percent(1 - called.upper()), Words.percent(mostFalse));
    }
    if (missed.of() < leastBad || missed.upper() > mostMissed) {
      return "Not known yet: %d joints were found bad at the bench; that tells no miss rate of %s or less. Try passed joints too, drawn at random."
          .formatted(missed.of(), Words.percent(mostMissed));
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
}
