package leadlight.scene.light;

/** Something slender over the board that shades single directions. */
public interface Screen {

  /** Whether the line from a place along a direction meets it. */
  boolean hides(double u, double v, double z, double du, double dv, double dz);
}
