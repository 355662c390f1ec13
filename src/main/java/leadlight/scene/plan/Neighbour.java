package leadlight.scene.plan;

/**
 * Something else on the board, near the row.
 *
 * @param kind what it is
 * @param uMm middle
 * @param vMm middle
 * @param alongMm size along the row
 * @param acrossMm size along the leads
 * @param heightMm top above the board; 0 for what lies in the board's face
 */
public record Neighbour(
    Kind kind, double uMm, double vMm, double alongMm, double acrossMm, double heightMm) {

  /** Kinds. */
  public enum Kind {
    /** A ceramic chip: dark or pale body between two tinned ends. */
    CHIP,
    /** A shell's leg in a plated slot, soldered. */
    LEG,
    /** A round test land. */
    TEST_LAND
  }
}
