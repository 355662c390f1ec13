package leadlight.joint.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * Finds leads that stand off their land or turned on it. The row's finder expects a lead near its
 * land; here the toe half and the heel half of each foot are sought up to so many pitches to either
 * side, by what a lead's top looks like in this row and by an edge on either side. What lies beyond
 * the edges does not count, since a displaced lead has other neighbours: mask on one side, a wide
 * fillet on the other.
 *
 * <p>A half's score at a place: so much for each edge as strong as the row's usual edge, less the
 * root mean square difference of the top's three planes in units of a scale; {@link
 * JointTuning.Placing} has the weights.
 */
final class LeadPlacer {

  private static final JointTuning.Placing PLACING = JointTuning.builtIn().placing();

  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;
  private final Half toeHalf;
  private final Half heelHalf;

  LeadPlacer(List<LevelledPatch> joints, RowGeometry geometry) {
    this.joints = joints;
    this.geometry = geometry;
    double middle = Math.max(0.52 * geometry.heelY(), -1.1);
    this.toeHalf = new Half(middle, -0.1);
    this.heelHalf = new Half(Math.max(0.95 * geometry.heelY(), -1.9), middle);
  }

  /** Places along the row, one a joint. */
  List<Placed> place() {
    List<Placed> placed = new ArrayList<>();
    for (LevelledPatch joint : joints) {
      placed.add(place(joint));
    }
    return placed;
  }

  private Placed place(LevelledPatch joint) {
    double[] toe = toeHalf.scores(joint);
    double[] heel = heelHalf.scores(joint);
    int bestToe = 0;
    int bestHeel = 0;
    double best = Double.NEGATIVE_INFINITY;
    int turn = (int) (PLACING.turnMost() * PatchGrid.DENSITY);
    for (int i = 0; i < toe.length; i++) {
      for (int k = Math.max(0, i - turn); k <= Math.min(heel.length - 1, i + turn); k++) {
        double score = toe[i] + heel[k] - cost(i, k);
        if (score > best) {
          best = score;
          bestToe = i;
          bestHeel = k;
        }
      }
    }
    int now = index(joint.patch().offset());
    double gain = best - (toe[now] + heel[now] - cost(now, now));
    return placed(offset(bestToe), offset(bestHeel), gain);
  }

  /** From the middles of the halves to the ends of the foot. */
  private Placed placed(double atToeHalf, double atHeelHalf, double gain) {
    double slope = (atToeHalf - atHeelHalf) / (toeHalf.middle() - heelHalf.middle());
    return new Placed(
        atToeHalf - slope * toeHalf.middle(),
        atHeelHalf + slope * (geometry.heelY() - heelHalf.middle()),
        gain);
  }

  private static double cost(int toe, int heel) {
    return PLACING.turnCost() * Math.abs(offset(toe) - offset(heel))
        + PLACING.awayCost() * (Math.abs(offset(toe)) + Math.abs(offset(heel)));
  }

  private static int steps() {
    return (int) (PLACING.reach() * PatchGrid.DENSITY);
  }

  private static double offset(int index) {
    return (index - steps()) / (double) PatchGrid.DENSITY;
  }

  private static int index(double offset) {
    int index = (int) Math.round(offset * PatchGrid.DENSITY) + steps();
    return Math.max(0, Math.min(2 * steps(), index));
  }

  /**
   * Where a lead is, against its land's middle.
   *
   * @param toe at the toe, pitches, positive towards pin N
   * @param heel at the heel
   * @param gain how much better this place scores than the one that the row gave
   */
  record Placed(double toe, double heel, double gain) {}

  /** One half of the feet: the row's usual top and edges there. */
  private final class Half {

    private final double from;
    private final double to;
    private final double[][] usualTop;
    private final double usualEdge;

    Half(double from, double to) {
      this.from = from;
      this.to = to;
      double[][] usual = usualProfiles();
      int inside = inside();
      int middle = PatchGrid.column(0);
      this.usualTop = new double[3][];
      for (int plane = 0; plane < 3; plane++) {
        usualTop[plane] = Arrays.copyOfRange(usual[plane], middle - inside, middle + inside + 1);
      }
      double[] edges = Edges.of(usual);
      int half = half();
      this.usualEdge =
          Math.max(
              PLACING.leastEdge(),
              (Edges.near(edges, middle - half) + Edges.near(edges, middle + half)) / 2);
    }

    double middle() {
      return (from + to) / 2;
    }

    private int inside() {
      return Math.max(
          1, (int) Math.round((geometry.leadHalf() - PLACING.inside()) * PatchGrid.DENSITY));
    }

    private int half() {
      return (int) Math.round(geometry.leadHalf() * PatchGrid.DENSITY);
    }

    private double[][] usualProfiles() {
      double[][] usual = new double[3][PatchGrid.WIDTH];
      double[][][] all = new double[joints.size()][][];
      for (int i = 0; i < all.length; i++) {
        LevelledPatch joint = joints.get(i);
        all[i] = profiles(joint.light(), joint.redGreen(), joint.yellowBlue());
      }
      double[] column = new double[all.length];
      for (int plane = 0; plane < 3; plane++) {
        for (int x = 0; x < PatchGrid.WIDTH; x++) {
          for (int i = 0; i < all.length; i++) {
            column[i] = all[i][plane][x];
          }
          usual[plane][x] = Quantiles.middle(column);
        }
      }
      return usual;
    }

    private double[][] profiles(float[]... planes) {
      double[][] profiles = new double[planes.length][];
      for (int plane = 0; plane < planes.length; plane++) {
        profiles[plane] =
            new Zone(planes[plane], -PatchGrid.X_HALF, PatchGrid.X_HALF, from, to).acrossLead();
      }
      return profiles;
    }

    /** Score at each offset from {@code -PLACING.reach()} to {@code PLACING.reach()}. */
    double[] scores(LevelledPatch joint) {
      double[][] profiles =
          profiles(joint.landLight(), joint.landRedGreen(), joint.landYellowBlue());
      double[] edges = Edges.of(profiles);
      double[] scores = new double[2 * steps() + 1];
      for (int i = 0; i < scores.length; i++) {
        int x = PatchGrid.column(0) + i - steps();
        scores[i] =
            PLACING.edgeWeight()
                    * (share(Edges.near(edges, x - half())) + share(Edges.near(edges, x + half())))
                - strangeness(profiles, x) / PLACING.colourScale();
      }
      return scores;
    }

    private double share(double edge) {
      return Math.min(PLACING.edgeMost(), edge / usualEdge);
    }

    private double strangeness(double[][] profiles, int x) {
      double sum = 0;
      int inside = inside();
      int count = 0;
      for (int plane = 0; plane < 3; plane++) {
        for (int i = -inside; i <= inside; i++) {
          int at = Math.max(0, Math.min(PatchGrid.WIDTH - 1, x + i));
          double difference = profiles[plane][at] - usualTop[plane][i + inside];
          sum += difference * difference;
          count++;
        }
      }
      return Math.sqrt(sum / count);
    }
  }
}
