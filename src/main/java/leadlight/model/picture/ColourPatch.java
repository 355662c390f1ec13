package leadlight.model.picture;

/**
 * A straightened piece of a photo: three planes of one size, 0 (dark) to 255 (full).
 *
 * @param red red
 * @param green green
 * @param blue blue
 */
public record ColourPatch(Plane red, Plane green, Plane blue) {

  /** Refuses planes of different sizes. */
  public ColourPatch {
    if (red.width() != green.width()
        || red.width() != blue.width()
        || red.height() != green.height()
        || red.height() != blue.height()) {
      throw new IllegalArgumentException("the three planes must have one size");
    }
  }

  /** Columns. */
  public int width() {
    return red.width();
  }

  /** Rows. */
  public int height() {
    return red.height();
  }
}
