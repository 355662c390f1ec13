package leadlight.scene.plan;

/**
 * A pick that pushes a lead along the row. Its shaft is a cone, its tip a ball; the lead stands
 * where its joint's plan says.
 *
 * @param land whose lead it pushes, counted from 1
 * @param toeMm how far the lead's toe has moved since the photo at rest, along the row
 * @param loose whether the lead is open
 * @param tipMm middle of the tip: u, v, z
 * @param leanRad from which side of the row's square the shaft comes, seen from above; above 0 its
 *     far end has the greater u
 * @param riseRad elevation of the shaft over the board
 * @param radiusMm of the tip
 * @param taper radius gained a millimetre
 * @param material what it is of
 */
public record Push(
    int land,
    double toeMm,
    boolean loose,
    double[] tipMm,
    double leanRad,
    double riseRad,
    double radiusMm,
    double taper,
    Material material) {

  /** Refuses a pick that has no place or no thickness. */
  public Push {
    if (land < 1 || tipMm == null || tipMm.length != 3 || !(radiusMm > 0) || !(taper >= 0)) {
      throw new IllegalArgumentException(
          "a push needs a land from 1, tip_mm [u, v, z], a radius above 0 and a taper from 0");
    }
  }
}
