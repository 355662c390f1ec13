package leadlight.joint.place;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * How well a lead fits to each place across. Its top, band by band: 0.3 for each edge as strong as
 * the row's usual one there (at most 1.3 times that counts), less the root mean square difference
 * from the row's usual top in units of {@link LeadPlacer#COLOUR_SCALE}. What lies beyond the edges
 * does not count, since a displaced lead has other neighbours. The weights are those of {@link
 * LeadPlacer}. Its toe: 0.6 for an edge across the lead's end as strong as the row's usual one; a
 * bare land that looks like a lead's top runs on there.
 */
final class FootScores {

  /** Places looked at to either side of the land's middle; farther a neighbour lies. */
  static final int STEPS = (int) (0.75 * PatchGrid.DENSITY);

  static final int PLACES = 2 * STEPS + 1;

  private static final double TOE_WEIGHT = 0.6;

  /** The toe's edge is sought this far about the row's toe, in a profile that reaches farther. */
  private static final double TOE_REACH = 0.12;

  private static final double TOE_PROFILE = 0.3;

  /** The profile along the lead leaves out its sides. */
  private static final double TOE_INSIDE = 0.04;

  private final FootBands bands;
  private final double toeHalf;
  private final double usualToe;
  private final int half;
  private final int inside;
  private final double[][][] usualTop = new double[FootBands.COUNT][][];
  private final double[] usualEdge = new double[FootBands.COUNT];

  FootScores(List<LevelledPatch> joints, FootBands bands, double leadHalf) {
    this.bands = bands;
    this.toeHalf = Math.max(leadHalf - TOE_INSIDE, 1.0 / PatchGrid.DENSITY);
    this.usualToe =
        Math.max(
            LeadPlacer.LEAST_EDGE,
            Quantiles.middle(
                joints.stream()
                    .mapToDouble(
                        joint -> toeEdge(0, joint.light(), joint.redGreen(), joint.yellowBlue()))
                    .toArray()));
    this.half = (int) Math.round(leadHalf * PatchGrid.DENSITY);
    this.inside = Math.max(1, (int) Math.round((leadHalf - LeadPlacer.INSIDE) * PatchGrid.DENSITY));
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
              LeadPlacer.LEAST_EDGE,
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
      scores[i] = TOE_WEIGHT * Math.min(LeadPlacer.EDGE_MOST, edge / usualToe);
    }
    return scores;
  }

  /** Strongest edge along the lead about the toe, all planes together, a pitch. */
  private double toeEdge(double x, float[]... planes) {
    double[][] profiles = new double[planes.length][];
    for (int plane = 0; plane < planes.length; plane++) {
      profiles[plane] =
          new Zone(planes[plane], x - toeHalf, x + toeHalf, -TOE_PROFILE, TOE_PROFILE).alongLead();
    }
    double[] edges = Edges.of(profiles);
    int first = PatchGrid.row(-TOE_REACH) - PatchGrid.row(-TOE_PROFILE);
    int last = PatchGrid.row(TOE_REACH) - PatchGrid.row(-TOE_PROFILE);
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
            LeadPlacer.EDGE_WEIGHT * edge
                - strangeness(profiles[band], usualTop[band], x) / LeadPlacer.COLOUR_SCALE;
      }
    }
    return scores;
  }

  private double share(double edge, int band) {
    return Math.min(LeadPlacer.EDGE_MOST, edge / usualEdge[band]);
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
