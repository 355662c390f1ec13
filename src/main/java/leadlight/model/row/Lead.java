package leadlight.model.row;

import leadlight.model.Checks;
import leadlight.model.PointPx;

/**
 * Where one lead is. The land's place follows the fitted row (smooth along it); the lead's own toe
 * and heel are measured, so a lead may stand off its land.
 *
 * @param pin 1 to N
 * @param toePx middle of the lead's open end, top surface; for a missing lead the place where the
 *     fitted row expects it
 * @param heelPx middle of the lead where it leaves the body or turns up
 * @param landToePx middle of the land's open end, by the fitted row
 * @param landHeelPx middle of the land's end at the body, by the fitted row
 * @param match normalised correlation with the row's own lead picture, -1 to 1
 * @param uAcrossPx standard uncertainty of the toe across the lead
 * @param uAlongPx standard uncertainty of the toe along the lead
 */
public record Lead(
    int pin,
    PointPx toePx,
    PointPx heelPx,
    PointPx landToePx,
    PointPx landHeelPx,
    double match,
    double uAcrossPx,
    double uAlongPx) {

  /** Refuses a pin below 1, a correlation out of range and a negative uncertainty. */
  public Lead {
    Checks.atLeast("pin", pin, 1);
    Checks.within("match", match, -1, 1);
    Checks.atLeast("uAcrossPx", uAcrossPx, 0);
    Checks.atLeast("uAlongPx", uAlongPx, 0);
  }

  /** The same lead, its place across the lead less sure by a factor. */
  public Lead lessSureAcross(double times) {
    return new Lead(pin, toePx, heelPx, landToePx, landHeelPx, match, times * uAcrossPx, uAlongPx);
  }
}
