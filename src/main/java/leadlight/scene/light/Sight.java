package leadlight.scene.light;

/** Finds what a line of sight meets first. */
public interface Sight {

  /**
   * Follows one line of sight; the hit is always filled.
   *
   * @param ray u, v on the board, du/dz, dv/dz
   * @param spare scratch
   */
  void trace(double[] ray, Hit best, Hit spare);
}
