package leadlight.model;

import java.util.List;

/** What Leadlight says of a joint, of a row, of a photo; from best to worst. */
public enum Verdict {
  ACCEPTABLE("acceptable"),
  PROCESS_INDICATOR("process-indicator"),
  UNJUDGED("unjudged"),
  DEFECT("defect");

  /** The order in which people are told. */
  public static final List<Verdict> WORST_FIRST =
      List.of(DEFECT, UNJUDGED, PROCESS_INDICATOR, ACCEPTABLE);

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
