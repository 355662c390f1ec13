package leadlight.grade.limits;

/** On which side of a limit a value conforms. */
public enum Bound {
  /** At most the limit. */
  UPPER,
  /** At least the limit. */
  LOWER
}
