package leadlight.scene.plan;

/**
 * Metal surfaces; roughness is the microfacet slope (alpha) of Walter et al. 2007.
 *
 * @param lead plating of the leads
 * @param leadRoughness of their tops
 * @param leadCrown slope of their tops at the sides: rolled-over edges, or a skin of solder
 * @param solderRoughness 0.06 mirror-like to 0.45 dull
 * @param solderGrain slope of the grain on the solder, 0 for none
 * @param landRoughness of bare lands
 * @param uneven how all of this differs from place to place; null where it does not
 */
public record MetalSpec(
    Material lead,
    double leadRoughness,
    double leadCrown,
    double solderRoughness,
    double solderGrain,
    double landRoughness,
    Uneven uneven) {

  /**
   * Blotches.
   *
   * @param sizeMm of a blotch
   * @param dull share of the solder that is dull, in blotches
   * @param shade darkest blotch, share of light lost
   * @param grain slope of the grain in dull blotches
   * @param worn as shade, on leads, where it is drawn out along them
   */
  public record Uneven(double sizeMm, double dull, double shade, double grain, double worn) {}
}
