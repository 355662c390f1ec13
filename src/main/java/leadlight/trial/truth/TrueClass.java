package leadlight.trial.truth;

/** What a joint truly is. */
public enum TrueClass {
  ACCEPTABLE,
  DEFECT,
  /** Too close to a limit, or a matter of taste: never counted. */
  LIMIT
}
