package leadlight.connector;

import java.util.OptionalDouble;

/** Lengths checked at construction. */
public final class Mm {

  /** No land, lead or leg of a fine-pitch part is longer. */
  private static final double LONGEST = 100;

  private Mm() {}

  /** A length or place that no part has: what was given is wrong, not the program. */
  public static final class NoSuchLength extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    NoSuchLength(String what) {
      super(what);
    }
  }

  static void within(String name, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new NoSuchLength(name + " must lie in [" + least + ", " + most + "], is " + value);
    }
  }

  static void length(String name, double value) {
    if (!(value > 0 && value <= LONGEST)) {
      throw new NoSuchLength(name + " must be above 0 and at most " + LONGEST + ", is " + value);
    }
  }

  static void length(String name, OptionalDouble value) {
    if (value.isPresent()) {
      length(name, value.getAsDouble());
    }
  }

  /** To the nanometre: hides what binary fractions add. */
  public static double tidy(double mm) {
    return Math.round(mm * 1e6) / 1e6 + 0.0;
  }
}
