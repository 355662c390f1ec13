package leadlight.leg.find;

import java.util.List;
import leadlight.model.BoardSide;

/**
 * Which legs to look for.
 *
 * @param side the side of the board that is photographed
 * @param legs the legs of one part with their places; or one, of which there may be several
 * @param pattern whether the places are known to each other
 * @param leadsAt where in the picture the part's leads are, if that was said: only so legs of a
 *     part that looks the same turned half round can be told apart
 */
public record LegRequest(BoardSide side, List<Leg> legs, boolean pattern, LeadsAt leadsAt) {

  /** Copies the list; refuses an empty one. */
  public LegRequest {
    legs = List.copyOf(legs);
    if (legs.isEmpty()) {
      throw new IllegalArgumentException("no leg to look for");
    }
  }

  /** Where in the picture the leads of the part are, seen from its legs. */
  public enum LeadsAt {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT,
    UNKNOWN
  }

  /**
   * One leg, from the component side with the leads above: x to the right, y down.
   *
   * @param number 1 to n; 0 if it has none
   * @param xMm middle of the land
   * @param yMm middle of the land
   * @param landWidthMm extent of the copper along x
   * @param landHeightMm along y
   * @param holeWidthMm extent of the hole along x
   * @param holeHeightMm along y
   */
  public record Leg(
      int number,
      double xMm,
      double yMm,
      double landWidthMm,
      double landHeightMm,
      double holeWidthMm,
      double holeHeightMm) {

    /** The same leg in another's land. */
    Leg withLandOf(Leg other) {
      return new Leg(
          number,
          xMm,
          yMm,
          other.landWidthMm,
          other.landHeightMm,
          other.holeWidthMm,
          other.holeHeightMm);
    }

    public Obround land() {
      return new Obround(landWidthMm, landHeightMm);
    }

    public Obround hole() {
      return new Obround(holeWidthMm, holeHeightMm);
    }
  }
}
