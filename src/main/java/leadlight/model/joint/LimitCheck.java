package leadlight.model.joint;

import leadlight.model.Checks;
import leadlight.model.Measure;
import leadlight.model.Quantity;

/**
 * A measure held against a limit.
 *
 * @param measure what was measured
 * @param measured value and standard uncertainty
 * @param limit the limit, in the unit of the value
 * @param atMost true if the value must not be above the limit, false if not below it
 * @param kept probability that the true value keeps the limit (JCGM 106:2012), or what both
 *     opinions together leave to it where the second reader was asked, too
 * @param clause where the limit comes from
 */
public record LimitCheck(
    Measure measure, Quantity measured, double limit, boolean atMost, double kept, String clause) {

  /** Refuses a limit that is not finite and a probability out of range. */
  public LimitCheck {
    Checks.finite("limit", limit);
    Checks.within("kept", kept, 0, 1);
  }
}
