package leadlight.scene.plan;

/**
 * Solder mask colours: diffuse reflectance in linear light over bare laminate and over copper.
 * Common practice, no source; chosen by eye from photos of boards.
 */
public enum Mask {
  GREEN(0.020, 0.110, 0.040, 0.035, 0.190, 0.060),
  DKGREEN(0.010, 0.050, 0.024, 0.014, 0.080, 0.034),
  BLUE(0.016, 0.036, 0.150, 0.024, 0.060, 0.230),
  RED(0.160, 0.010, 0.012, 0.270, 0.020, 0.020),
  BLACK(0.011, 0.011, 0.012, 0.018, 0.018, 0.018),
  WHITE(0.640, 0.650, 0.640, 0.700, 0.690, 0.660),
  PURPLE(0.050, 0.008, 0.100, 0.100, 0.014, 0.170),
  YELLOW(0.450, 0.300, 0.020, 0.600, 0.430, 0.040);

  public final double[] laminate;
  public final double[] copper;

  Mask(double r, double g, double b, double cr, double cg, double cb) {
    this.laminate = new double[] {r, g, b};
    this.copper = new double[] {cr, cg, cb};
  }

  /** True for a board that a camera leaves bright. */
  public boolean pale() {
    return laminate[0] > 0.3;
  }

  /** True for a board that stays dark in a picture. */
  public boolean dark() {
    return laminate[0] + laminate[1] + laminate[2] < 0.1;
  }

  /** The name in truth files. */
  public String id() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
