package leadlight.model;

/** Arguments checked at construction, so that NaN fails there and not three stages later. */
public final class Checks {

  private Checks() {}

  public static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite, is " + value);
    }
  }

  public static void atLeast(String name, double value, double least) {
    if (!(value >= least) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be at least " + least + ", is " + value);
    }
  }

  public static void within(String name, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          name + " must lie in [" + least + ", " + most + "], is " + value);
    }
  }

  public static void above(String name, double value, double bound) {
    if (!(value > bound) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above " + bound + ", is " + value);
    }
  }
}
