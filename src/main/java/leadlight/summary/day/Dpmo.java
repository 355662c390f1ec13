package leadlight.summary.day;

import java.util.Optional;
import leadlight.record.scoring.Stage;
import leadlight.statistics.ClusterRate;

/**
 * Defects per million opportunities, one opportunity a soldered termination (IPC-7912), here a
 * judged joint or anchor leg: one that the photo does not show is no opportunity to see a defect.
 * Joints of one board are alike, so the 95 % interval is by board.
 *
 * @param stage of which stage of the boards; empty: of each board's last
 * @param rate joints and legs that are a defect, of those judged, a cluster a board
 * @param legs anchor legs among those judged
 */
public record Dpmo(Optional<Stage> stage, ClusterRate rate, int legs) {

  private static final double MILLION = 1e6;

  /** Joints and legs that are a defect. */
  public int defects() {
    return rate.count();
  }

  /** Judged joints and legs. */
  public int opportunities() {
    return rate.of();
  }

  /** Defects per million; NaN without opportunities. */
  public double value() {
    return MILLION * rate.share();
  }

  /** Lower end of the interval; 0 without opportunities. */
  public double lower() {
    return MILLION * rate.lower();
  }

  /** Upper end of the interval; a million without opportunities. */
  public double upper() {
    return MILLION * rate.upper();
  }

  /** Lower end of Wilson's interval, as if each joint stood alone. */
  public double plainLower() {
    return MILLION * rate.plain().lower();
  }

  /** Upper end of Wilson's interval, as if each joint stood alone. */
  public double plainUpper() {
    return MILLION * rate.plain().upper();
  }
}
