package leadlight.numeric;

/** The parabola through three neighbouring values. */
public final class Parabola {

  private Parabola() {}

  /** Place of the vertex, steps from the middle value; 0 where the three lie on a line. */
  public static double vertex(double before, double middle, double after) {
    double curve = before - 2 * middle + after;
    return curve == 0 ? 0 : 0.5 * (before - after) / curve;
  }

  /** The top through the greatest value and its neighbours; that value's own place at an end. */
  public static double peak(double[] values, int greatest) {
    if (greatest == 0 || greatest == values.length - 1) {
      return greatest;
    }
    double before = values[greatest - 1];
    double after = values[greatest + 1];
    boolean top = before - 2 * values[greatest] + after < 0;
    return greatest + (top ? vertex(before, values[greatest], after) : 0);
  }
}
