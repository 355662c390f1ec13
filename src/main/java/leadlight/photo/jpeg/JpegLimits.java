package leadlight.photo.jpeg;

/**
 * From where on a picture is damaged for certain; the values and their sources stand in {@code
 * models/photo/limits.json}.
 *
 * @param scansMax scans of a picture, at most
 * @param lastZerosMax bytes of zeros that a picture may end in, if more of them fill it up
 * @param range what makes a block one that no picture can hold
 * @param seam what makes a step in brightness a seam
 */
public record JpegLimits(int scansMax, int lastZerosMax, Range range, Seam seam) {

  /**
   * What makes a block one that no picture can hold.
   *
   * @param outsideMax its squared distance from what 8 bits can hold, as a share of the sum of its
   *     squared divisors
   * @param overshoot grey levels by which white may overshoot, at most
   * @param fastTransform grey levels a sample by which an encoder may err besides
   */
  public record Range(double outsideMax, double overshoot, double fastTransform) {}

  /**
   * What makes a step in brightness a seam.
   *
   * @param strength height of the step by its standard error, at least
   * @param coarseSteps height of the step by the finest that the file can hold, at least
   * @param texture spread of the picture along it in grey levels, at least
   * @param likeness correlation of both sides, at least
   * @param slope how much one side changes with the other: at least this, at most its inverse
   * @param roughShare how far means may be from what medians must show, as a share of the step
   * @param blocks blocks on each part of its border, at least
   */
  public record Seam(
      double strength,
      double coarseSteps,
      double texture,
      double likeness,
      double slope,
      double roughShare,
      int blocks) {}
}
