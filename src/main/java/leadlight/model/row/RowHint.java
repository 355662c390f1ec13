package leadlight.model.row;

import java.util.Optional;
import leadlight.model.BodySide;
import leadlight.model.Checks;

/**
 * What a person says of where the row lies in the upright photo; at least one of the two.
 *
 * @param box where the middles of its leads lie
 * @param body on which side of the leads the connector's body lies, as in {@link BodySide}
 */
public record RowHint(Optional<Box> box, Optional<BodySide> body) {

  /** Refuses a hint that says nothing. */
  public RowHint {
    if (box.isEmpty() && body.isEmpty()) {
      throw new IllegalArgumentException("a hint names a place or the body's side");
    }
  }

  /**
   * A box in the photo.
   *
   * @param x left edge, pixels
   * @param y upper edge, pixels
   * @param widthPx width; 0 for a point near the row
   * @param heightPx height; 0 for a point near the row
   */
  public record Box(double x, double y, double widthPx, double heightPx) {

    /** Refuses numbers that are not finite and a negative size. */
    public Box {
      Checks.finite("x", x);
      Checks.finite("y", y);
      Checks.atLeast("widthPx", widthPx, 0);
      Checks.atLeast("heightPx", heightPx, 0);
    }
  }

  /** A hint by place alone. */
  public static RowHint in(Box box) {
    return new RowHint(Optional.of(box), Optional.empty());
  }

  /** What was said, if anything was. */
  public static Optional<RowHint> of(Optional<Box> box, Optional<BodySide> body) {
    return box.isEmpty() && body.isEmpty() ? Optional.empty() : Optional.of(new RowHint(box, body));
  }
}
