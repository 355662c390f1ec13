package leadlight.scene.light;

/** Large boxes that shade what lies beside them, met exactly. */
public interface Roof {

  /** Steepness of the line from a place outside a box to its upper edge, along a direction. */
  double steepness(double u, double v, double z, double du, double dv);
}
