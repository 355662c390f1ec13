package leadlight.joint.cut;

/**
 * The stretch of a foot that is looked at to place a lead, cut into bands across: a bent foot
 * turns, so that each band has its own place.
 *
 * @param end y of the stretch's end towards the body, pitches, negative
 */
public record FootBands(double end) {

  public static final int COUNT = 8;

  /** The toe's own edge and what lies ahead of it belong to no band. */
  private static final double START = -0.08;

  /**
   * The row's finder sometimes takes a shadow on the foot for its heel. Feet of the connectors
   * served reach at least so far behind their toes: 0.6 mm at 0.5 mm pitch, 0.7 at 0.8.
   */
  private static final double LEAST = -1.0;

  /** Farther behind, leads turn up or the body hides them. */
  private static final double MOST = -1.9;

  /** The heel's own bend shines otherwise than the foot. */
  private static final double OF_HEEL = 0.95;

  public static FootBands of(RowGeometry geometry) {
    return new FootBands(Math.min(LEAST, Math.max(OF_HEEL * geometry.heelY(), MOST)));
  }

  private double border(int band) {
    return end + (START - end) * band / COUNT;
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
