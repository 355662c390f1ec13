package leadlight.joint.cut;

/**
 * The raster on which a joint is straightened. Coordinates in units of the local pitch: x across
 * the lead (0 at its middle or at the land's middle), y along it (0 at the toe, negative towards
 * the body, positive over the land ahead of the toe). So a measure means the same at every scale.
 */
public final class PatchGrid {

  /**
   * Pixels a pitch. A hair bridge of 0.1 pitch still covers three of them; finer costs time and
   * shows no more, since photos of 20 to 40 px a pitch are the normal case.
   */
  public static final int DENSITY = 32;

  /** Half width: both neighbours' middles are just inside. */
  public static final double X_HALF = 1.0;

  /** Towards the body: a foot of 1.4 mm at 0.5 mm pitch is 2.8 long. */
  public static final double Y_FROM = -2.9;

  /** Beyond the toe: the land runs on for 0.4 to 1.3 pitch, then the mask shows. */
  public static final double Y_TO = 1.4;

  public static final int WIDTH = (int) (2 * X_HALF * DENSITY) + 1;
  public static final int HEIGHT = (int) ((Y_TO - Y_FROM) * DENSITY) + 1;

  private PatchGrid() {}

  /** Column nearest to x, kept within the patch. */
  public static int column(double x) {
    return clamp((int) Math.round((x + X_HALF) * DENSITY), WIDTH);
  }

  /** Row nearest to y, kept within the patch. */
  public static int row(double y) {
    return clamp((int) Math.round((y - Y_FROM) * DENSITY), HEIGHT);
  }

  private static int clamp(int index, int size) {
    return Math.max(0, Math.min(size - 1, index));
  }
}
