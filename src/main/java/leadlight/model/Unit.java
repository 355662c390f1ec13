package leadlight.model;

/** Units of the measures. A share is a pure number from 0 to 1. */
public enum Unit {
  MM("mm"),
  PX("px"),
  DEGREE("deg"),
  SHARE("1"),
  /** A pure number without bounds, as a contrast or a ratio. */
  NUMBER("1");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  /** The symbol printed behind a value; "1" for a pure number. */
  public String symbol() {
    return symbol;
  }
}
