package leadlight.scene.plan;

import java.util.List;

/**
 * The board.
 *
 * @param mask colour of the solder mask
 * @param finish what a bare land shows
 * @param openingMm mask clearance round a land
 * @param gang one opening for the whole row
 * @param traces share of lands that a trace leaves
 * @param traceWidthMm width of a trace
 * @param pour copper under the mask beside the row
 * @param paired share of neighbouring lands that copper under the mask joins
 * @param print white print near the row
 * @param specks grains of dust a square millimetre
 * @param neighbours other things on the board
 */
public record BoardSpec(
    Mask mask,
    Material finish,
    double openingMm,
    boolean gang,
    double traces,
    double traceWidthMm,
    boolean pour,
    double paired,
    boolean print,
    double specks,
    List<Neighbour> neighbours) {

  /** Copies the list. */
  public BoardSpec {
    neighbours = neighbours == null ? List.of() : List.copyOf(neighbours);
  }

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
}
