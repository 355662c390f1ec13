package leadlight.joint.dirt;

/**
 * A connected piece of {@link RowCells} that is unlike the row's typical picture.
 *
 * @param points raster points
 * @param wide longer side of its bounding box, pitches
 * @param elongation ratio of the axes of its spread
 * @param fill share of its bounding box
 * @param touches share of its rim that lies on a land
 * @param cut whether it reaches the cells' edge
 * @param x middle, column of the cells
 * @param y middle, row of the cells
 * @param peak greatest strangeness
 * @param highlight brightest point less the typical light there
 * @param greyGain how much nearer to the leads' colour than the typical picture
 * @param spans strangeness that every column of its gap keeps, share of its peak
 */
public record Spot(
    int points,
    double wide,
    double elongation,
    double fill,
    double touches,
    boolean cut,
    int x,
    int y,
    double peak,
    double highlight,
    double greyGain,
    double spans) {

  /** Whether this is compact, metal-like, free of the lands and no bridge. */
  public boolean ballLike(DirtLimits.Spot limits) {
    boolean compact =
        !cut
            && points >= limits.leastPx().value()
            && wide <= limits.mostWide().value()
            && elongation <= limits.elongation().value()
            && fill >= limits.fill().value();
    return compact
        && touches <= limits.touches().value()
        && greyGain >= limits.greyGain().value()
        && spans <= limits.spans().value();
  }
}
