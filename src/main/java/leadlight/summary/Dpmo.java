package leadlight.summary;

import java.util.Optional;
import leadlight.record.Stage;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * Defects per million opportunities, one opportunity a soldered termination (IPC-7912), here a
 * judged joint: one that the photo does not show is no opportunity to see a defect. With the 95 %
 * Wilson score interval (Wilson 1927).
 *
 * @param stage of which stage of the boards; empty: of each board's last
 * @param defects joints that are a defect
 * @param opportunities judged joints
 */
public record Dpmo(Optional<Stage> stage, int defects, int opportunities) {

  private static final double MILLION = 1e6;
  private static final double ERROR_RATE = 0.05;

  /** Defects per million; NaN without opportunities. */
  public double value() {
    return MILLION * defects / opportunities;
  }

  /** Lower end of the interval; 0 without opportunities. */
  public double lower() {
    return opportunities == 0 ? 0 : MILLION * interval().getLowerBound();
  }

  /** Upper end of the interval; a million without opportunities. */
  public double upper() {
    return opportunities == 0 ? MILLION : MILLION * interval().getUpperBound();
  }

  private Interval interval() {
    return BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(
        opportunities, defects, ERROR_RATE);
  }
}
