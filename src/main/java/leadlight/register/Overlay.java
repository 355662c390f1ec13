package leadlight.register;

import leadlight.model.Homography;

/**
 * Two photos of a row, one laid over the other.
 *
 * @param fixed the first photo's cut
 * @param moving the other's, over the same grid
 * @param gridToMoving grid pixels to pixels of the other photo
 * @param likeness correlation of their evened light, -1 to 1
 * @param ownLikeness the same of what does not repeat at the pitch: what is this row's own
 * @param margin how much less that is if the row is counted one pin off; 0 if that was not tried
 */
public record Overlay(
    Cut fixed,
    Cut moving,
    Homography gridToMoving,
    double likeness,
    double ownLikeness,
    double margin) {

  Overlay withMargin(double newMargin) {
    return new Overlay(fixed, moving, gridToMoving, likeness, ownLikeness, newMargin);
  }

  /** Whether a grid pixel lies in both photos. */
  public boolean seen(int index) {
    return fixed.seen()[index] && moving.seen()[index];
  }

  /** From a place of the first photo to its place in the other. */
  public Homography toMoving(Homography gridToFixed) {
    return gridToMoving.after(gridToFixed.inverse());
  }
}
