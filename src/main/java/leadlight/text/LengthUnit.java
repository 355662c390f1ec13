package leadlight.text;

/** Units in which people read lengths. One inch is 25.4 mm exactly; a mil is a thousandth of it. */
public enum LengthUnit {
  MM("mm", 1, 3),
  MIL("mil", 1000 / 25.4, 1),
  INCH("in", 1 / 25.4, 4);

  private final String symbol;
  private final double perMm;
  private final int decimals;

  LengthUnit(String symbol, double perMm, int decimals) {
    this.symbol = symbol;
    this.perMm = perMm;
    this.decimals = decimals;
  }

  /** As it stands behind a number. */
  public String symbol() {
    return symbol;
  }

  double of(double mm) {
    return mm * perMm;
  }

  int decimals() {
    return decimals;
  }
}
