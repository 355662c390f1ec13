package leadlight.joint.place;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.PatchGrid;
import leadlight.numeric.Quantiles;

/**
 * How well a stretch of a lead's top fits to each place across: so much for each edge as strong as
 * the row's usual one there, less the root mean square difference from the row's usual top, by
 * {@link JointTuning.Placing}. What lies beyond the edges does not count, since a displaced lead
 * has other neighbours.
 */
final class TopFit {

  private static final JointTuning.Placing PLACING = JointTuning.builtIn().placing();

  private final int half;
  private final int inside;
  private final double[][] usualTop;
  private final double usualEdge;

  /**
   * Takes what is usual in the row.
   *
   * @param all profiles across of the stretch, by joint and plane
   * @param leadHalf half the lead's width, pitches
   */
  TopFit(List<double[][]> all, double leadHalf) {
    this.half = (int) Math.round(leadHalf * PatchGrid.DENSITY);
    this.inside = Math.max(1, (int) Math.round((leadHalf - PLACING.inside()) * PatchGrid.DENSITY));
    double[][] usual = usual(all);
    int middle = PatchGrid.column(0);
    this.usualTop = new double[usual.length][];
    for (int plane = 0; plane < usual.length; plane++) {
      usualTop[plane] = Arrays.copyOfRange(usual[plane], middle - inside, middle + inside + 1);
    }
    double[] edges = Edges.of(usual);
    this.usualEdge =
        Math.max(
            PLACING.leastEdge(),
            (Edges.near(edges, middle - half) + Edges.near(edges, middle + half)) / 2);
  }

  private static double[][] usual(List<double[][]> all) {
    double[][] usual = new double[all.get(0).length][PatchGrid.WIDTH];
    double[] column = new double[all.size()];
    for (int plane = 0; plane < usual.length; plane++) {
      for (int x = 0; x < PatchGrid.WIDTH; x++) {
        for (int i = 0; i < column.length; i++) {
          column[i] = all.get(i)[plane][x];
        }
        usual[plane][x] = Quantiles.middle(column);
      }
    }
    return usual;
  }

  /** Scores of one joint's profiles at so many columns to either side of the land's middle. */
  double[] scores(double[][] profiles, int steps) {
    double[] edges = Edges.of(profiles);
    double[] scores = new double[2 * steps + 1];
    for (int i = 0; i < scores.length; i++) {
      int x = PatchGrid.column(0) + i - steps;
      double edge = share(Edges.near(edges, x - half)) + share(Edges.near(edges, x + half));
      scores[i] = PLACING.edgeWeight() * edge - strangeness(profiles, x) / PLACING.colourScale();
    }
    return scores;
  }

  private double share(double edge) {
    return Math.min(PLACING.edgeMost(), edge / usualEdge);
  }

  private double strangeness(double[][] profiles, int x) {
    double sum = 0;
    for (int plane = 0; plane < profiles.length; plane++) {
      for (int i = -inside; i <= inside; i++) {
        int at = Math.max(0, Math.min(PatchGrid.WIDTH - 1, x + i));
        double difference = profiles[plane][at] - usualTop[plane][i + inside];
        sum += difference * difference;
      }
    }
    return Math.sqrt(sum / (profiles.length * (2 * inside + 1)));
  }
}
