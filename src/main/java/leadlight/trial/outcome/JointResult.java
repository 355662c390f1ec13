package leadlight.trial.outcome;

/** What Leadlight's verdict on a joint was worth. */
public enum JointResult {
  /** Acceptable, and not called a defect. */
  PASSED,
  /** A defect, and called one. */
  CAUGHT,
  /** A defect that was called acceptable or a process indicator. */
  MISSED,
  /** Acceptable, and called a defect. */
  FALSE_CALL,
  /** Acceptable or a defect, and unjudged. */
  UNJUDGED,
  /** At the limit: never counted. */
  NOT_COUNTED
}
