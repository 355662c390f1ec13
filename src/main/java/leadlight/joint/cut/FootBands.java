package leadlight.joint.cut;

/**
 * The stretch of a foot that is looked at to place a lead, cut into bands across: a bent foot
 * turns, so that each band has its own place.
 *
 * @param end y of the stretch's end towards the body, pitches, negative
 */
public record FootBands(double end) {

  public static final int COUNT = 8;

  private static final JointTuning.Foot FOOT = JointTuning.builtIn().foot();

  public static FootBands of(RowGeometry geometry) {
    return new FootBands(
        Math.min(FOOT.least(), Math.max(FOOT.ofHeel() * geometry.heelY(), FOOT.most())));
  }

  private double border(int band) {
    return end + (FOOT.toeEnd() - end) * band / COUNT;
  }

  /** Where a band lies: 0 at the toe, 1 at the stretch's end. */
  public double share(int band) {
    return (border(band) + border(band + 1)) / 2 / end;
  }

  /** Profiles across, by band and plane, on the raster of the planes. */
  public double[][][] profiles(float[]... planes) {
    double[][][] profiles = new double[COUNT][planes.length][];
    for (int band = 0; band < COUNT; band++) {
      for (int plane = 0; plane < planes.length; plane++) {
        profiles[band][plane] =
            new Zone(
                    planes[plane],
                    -PatchGrid.X_HALF,
                    PatchGrid.X_HALF,
                    border(band),
                    border(band + 1))
                .acrossLead();
      }
    }
    return profiles;
  }
}
