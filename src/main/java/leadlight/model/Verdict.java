package leadlight.model;

/** What Leadlight says of a joint, of a row, of a photo; from best to worst. */
public enum Verdict {
  ACCEPTABLE("acceptable"),
  PROCESS_INDICATOR("process-indicator"),
  UNJUDGED("unjudged"),
  DEFECT("defect");

  private final String id;

  Verdict(String id) {
    this.id = id;
  }

  /** The name in files and reports. */
  public String id() {
    return id;
  }

  /** The worse of two verdicts. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
