package leadlight.quality.chart;

/** Control charts for counts (NIST/SEMATECH e-Handbook 6.3.3; IPC-7912 for DPMO). */
public enum ChartKind {
  /** Nonconforming units of units inspected: binomial. */
  P("p", "share nonconforming"),
  /** Defects a unit, units may vary: Poisson. */
  U("u", "defects a unit"),
  /** Defects in a group of constant size: Poisson. */
  C("c", "defects"),
  /** Defects per million opportunities: as u, a million times. */
  DPMO("DPMO", "defects per million opportunities");

  private final String word;
  private final String axis;

  ChartKind(String word, String axis) {
    this.word = word;
    this.axis = axis;
  }

  /** Its usual name. */
  public String word() {
    return word;
  }

  /** What its points show. */
  public String axis() {
    return axis;
  }

  double scale() {
    return this == DPMO ? 1e6 : 1;
  }
}
