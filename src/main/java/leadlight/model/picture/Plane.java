package leadlight.model.picture;

import leadlight.model.Checks;

/**
 * One channel of a picture as numbers, row by row. The array is owned by the plane: neither the
 * giver nor the reader may change it.
 *
 * @param width columns, at least 1
 * @param height rows, at least 1
 * @param data {@code width * height} values, row by row
 */
public record Plane(int width, int height, float[] data) {

  /** Refuses a length that does not fit. */
  public Plane {
    Checks.atLeast("width", width, 1);
    Checks.atLeast("height", height, 1);
    if (data.length != width * height) {
      throw new IllegalArgumentException(
          "data must hold " + width + " x " + height + " values, holds " + data.length);
    }
  }

  /** The value in column x, row y. */
  public float at(int x, int y) {
    return data[y * width + x];
  }
}
