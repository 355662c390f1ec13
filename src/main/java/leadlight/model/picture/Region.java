package leadlight.model.picture;

/**
 * A rectangle at a joint, in pitches: x from the land's middle towards pin N, y from the toe,
 * negative towards the body; the frame of {@link JointView}.
 *
 * @param x0 edge towards pin 1
 * @param y0 edge towards the body
 * @param x1 edge towards pin N
 * @param y1 edge away from the body
 */
public record Region(double x0, double y0, double x1, double y1) {

  /** Refuses edges in the wrong order. */
  public Region {
    if (!(x0 < x1 && y0 < y1)) {
      throw new IllegalArgumentException("a region has a width and a height");
    }
  }
}
