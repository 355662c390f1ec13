package leadlight.model;

/**
 * Where a person pointed at the row: a box in the upright photo in which the middles of its leads
 * lie.
 *
 * @param x left edge, pixels
 * @param y upper edge, pixels
 * @param widthPx width; 0 for a point near the row
 * @param heightPx height; 0 for a point near the row
 */
public record RowHint(double x, double y, double widthPx, double heightPx) {

  /** Refuses numbers that are not finite and a negative size. */
  public RowHint {
    Checks.finite("x", x);
    Checks.finite("y", y);
    Checks.atLeast("widthPx", widthPx, 0);
    Checks.atLeast("heightPx", heightPx, 0);
  }
}
