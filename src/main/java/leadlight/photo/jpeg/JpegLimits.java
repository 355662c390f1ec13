package leadlight.photo.jpeg;

/**
 * From where on a picture is damaged for certain; the values and their sources stand in {@code
 * models/photo/limits.json}.
 *
 * @param scansMax scans of a picture, at most
 * @param outOfRangeMax squared distance of a block from what 8 bits can hold, as a share of the sum
 *     of its squared divisors
 * @param seam what makes a step in brightness a seam
 */
public record JpegLimits(int scansMax, double outOfRangeMax, Seam seam) {

  /**
   * What makes a step in brightness a seam.
   *
   * @param strength height of the step by its standard error, at least
   * @param coarseSteps height of the step by the finest that the file can hold, at least
   * @param texture spread of the picture along it in grey levels, at least
   * @param likeness correlation of both sides, at least
   * @param slope how much one side changes with the other: at least this, at most its inverse
   * @param blocks blocks on each part of its border, at least
   */
  public record Seam(
      double strength,
      double coarseSteps,
      double texture,
      double likeness,
      double slope,
      int blocks) {}
}
