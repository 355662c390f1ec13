package leadlight.joint.place;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * How well a lead fits to each place across, by {@link JointTuning.Placing}. Its top, band by band:
 * so much for each edge as strong as the row's usual one there, less the root mean square
 * difference from the row's usual top. What lies beyond the edges does not count, since a displaced
 * lead has other neighbours. The weights are those of {@link LeadPlacer}. Its toe: so much for an
 * edge across the lead's end as strong as the row's usual one; a bare land that looks like a lead's
 * top runs on there.
 */
final class FootScores {

  private static final JointTuning.Placing PLACING = JointTuning.builtIn().placing();

  /** Places looked at to either side of the land's middle; farther a neighbour lies. */
  static final int STEPS = (int) (0.75 * PatchGrid.DENSITY);

  static final int PLACES = 2 * STEPS + 1;

  private final FootBands bands;
  private final double toeHalf;
  private final double usualToe;
  private final int half;
  private final int inside;
  private final double[][][] usualTop = new double[FootBands.COUNT][][];
  private final double[] usualEdge = new double[FootBands.COUNT];

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
    this.half = (int) Math.round(leadHalf * PatchGrid.DENSITY);
    this.inside = Math.max(1, (int) Math.round((leadHalf - PLACING.inside()) * PatchGrid.DENSITY));
    double[][][][] all = new double[joints.size()][][][];
    for (int i = 0; i < all.length; i++) {
      LevelledPatch joint = joints.get(i);
      all[i] = bands.profiles(joint.light(), joint.redGreen(), joint.yellowBlue());
    }
    int middle = PatchGrid.column(0);
    for (int band = 0; band < FootBands.COUNT; band++) {
      double[][] usual = usual(all, band);
      double[] edges = Edges.of(usual);
      usualTop[band] = new double[usual.length][];
      for (int plane = 0; plane < usual.length; plane++) {
        usualTop[band][plane] =
            Arrays.copyOfRange(usual[plane], middle - inside, middle + inside + 1);
      }
      usualEdge[band] =
          Math.max(
              PLACING.leastEdge(),
              (Edges.near(edges, middle - half) + Edges.near(edges, middle + half)) / 2);
    }
  }

  private static double[][] usual(double[][][][] all, int band) {
    double[][] usual = new double[all[0][band].length][PatchGrid.WIDTH];
    double[] column = new double[all.length];
    for (int plane = 0; plane < usual.length; plane++) {
      for (int x = 0; x < PatchGrid.WIDTH; x++) {
        for (int i = 0; i < all.length; i++) {
          column[i] = all[i][band][plane][x];
        }
        usual[plane][x] = Quantiles.middle(column);
      }
    }
    return usual;
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
    double[][] scores = new double[FootBands.COUNT][PLACES];
    for (int band = 0; band < scores.length; band++) {
      double[] edges = Edges.of(profiles[band]);
      for (int i = 0; i < PLACES; i++) {
        int x = PatchGrid.column(0) + i - STEPS;
        double edge =
            share(Edges.near(edges, x - half), band) + share(Edges.near(edges, x + half), band);
        scores[band][i] =
            PLACING.edgeWeight() * edge
                - strangeness(profiles[band], usualTop[band], x) / PLACING.colourScale();
      }
    }
    return scores;
  }

  private double share(double edge, int band) {
    return Math.min(PLACING.edgeMost(), edge / usualEdge[band]);
  }

  private double strangeness(double[][] profiles, double[][] usual, int x) {
    double sum = 0;
    for (int plane = 0; plane < profiles.length; plane++) {
      for (int i = -inside; i <= inside; i++) {
        int at = Math.max(0, Math.min(PatchGrid.WIDTH - 1, x + i));
        double difference = profiles[plane][at] - usual[plane][i + inside];
        sum += difference * difference;
      }
    }
    return Math.sqrt(sum / (profiles.length * (2 * inside + 1)));
  }
}
