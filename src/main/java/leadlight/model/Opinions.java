package leadlight.model;

/** Whose opinion on the solder decides. */
public enum Opinions {
  /** Measures and the second reader, weighed together. */
  BOTH("both"),
  /** Measures alone. */
  MEASURES("measures"),
  /** The second reader alone: for trials, not for the bench. */
  READER("reader");

  private final String id;

  Opinions(String id) {
    this.id = id;
  }

  /** The name in files and commands. */
  public String id() {
    return id;
  }
}
