package leadlight.quality.sampling;

/** How strictly a series of lots is inspected (ISO 2859-1, 9). */
public enum Severity {
  NORMAL,
  TIGHTENED,
  REDUCED;

  /** The word in files and reports. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
