package leadlight.trial.outcome;

/** What Leadlight's row was worth. */
public enum RowResult {
  RIGHT,
  NOT_FOUND,
  WRONG
}
