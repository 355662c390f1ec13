package leadlight.joint.place;

import java.util.List;
import java.util.stream.IntStream;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * How well a lead fits to each place across. Its top: band by band its {@link TopFit}. Its toe: so
 * much for an edge across the lead's end as strong as the row's usual one ({@link
 * JointTuning.Placing}); a bare land that looks like a lead's top runs on there.
 */
final class FootScores {

  private static final JointTuning.Placing PLACING = JointTuning.builtIn().placing();

  /** Places looked at to either side of the land's middle; farther a neighbour lies. */
  static final int STEPS = (int) (0.75 * PatchGrid.DENSITY);

  static final int PLACES = 2 * STEPS + 1;

  private final FootBands bands;
  private final double toeHalf;
  private final double usualToe;
  private final List<TopFit> tops;

  FootScores(List<LevelledPatch> joints, FootBands bands, double leadHalf) {
    this.bands = bands;
    this.toeHalf = Math.max(leadHalf - PLACING.toeInside(), 1.0 / PatchGrid.DENSITY);
    this.usualToe =
        Math.max(
            PLACING.leastEdge(),
            Quantiles.middle(
                joints.stream()
                    .mapToDouble(
                        joint -> toeEdge(0, joint.light(), joint.redGreen(), joint.yellowBlue()))
                    .toArray()));
    List<double[][][]> all =
        joints.stream()
            .map(it -> bands.profiles(it.light(), it.redGreen(), it.yellowBlue()))
            .toList();
    this.tops =
        IntStream.range(0, FootBands.COUNT)
            .mapToObj(band -> new TopFit(all.stream().map(it -> it[band]).toList(), leadHalf))
            .toList();
  }

  /**
   * One lead's scores.
   *
   * @param bands by band of the foot and place
   * @param toe by place of the toe
   */
  record Fit(double[][] bands, double[] toe) {}

  Fit of(LevelledPatch joint) {
    return new Fit(bandScores(joint), toeScores(joint));
  }

  private double[] toeScores(LevelledPatch joint) {
    double[] scores = new double[PLACES];
    for (int i = 0; i < PLACES; i++) {
      double x = (i - STEPS) / (double) PatchGrid.DENSITY;
      double edge = toeEdge(x, joint.landLight(), joint.landRedGreen(), joint.landYellowBlue());
      scores[i] = PLACING.toeWeight() * Math.min(PLACING.edgeMost(), edge / usualToe);
    }
    return scores;
  }

  /** Strongest edge along the lead about the toe, all planes together, a pitch. */
  private double toeEdge(double x, float[]... planes) {
    double[][] profiles = new double[planes.length][];
    for (int plane = 0; plane < planes.length; plane++) {
      profiles[plane] =
          new Zone(
                  planes[plane],
                  x - toeHalf,
                  x + toeHalf,
                  -PLACING.toeProfile(),
                  PLACING.toeProfile())
              .alongLead();
    }
    double[] edges = Edges.of(profiles);
    int first = PatchGrid.row(-PLACING.toeReach()) - PatchGrid.row(-PLACING.toeProfile());
    int last = PatchGrid.row(PLACING.toeReach()) - PatchGrid.row(-PLACING.toeProfile());
    double strongest = 0;
    for (int y = first; y <= last; y++) {
      strongest = Math.max(strongest, edges[y]);
    }
    return strongest;
  }

  private double[][] bandScores(LevelledPatch joint) {
    double[][][] profiles =
        bands.profiles(joint.landLight(), joint.landRedGreen(), joint.landYellowBlue());
    double[][] scores = new double[FootBands.COUNT][];
    for (int band = 0; band < scores.length; band++) {
      scores[band] = tops.get(band).scores(profiles[band], STEPS);
    }
    return scores;
  }
}
