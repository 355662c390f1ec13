package leadlight.joint.place;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Zone;

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
final class DisplacedLeads {

  private static final JointTuning.Placing PLACING = JointTuning.builtIn().placing();

  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;
  private final Half toeHalf;
  private final Half heelHalf;

  DisplacedLeads(List<LevelledPatch> joints, RowGeometry geometry) {
    this.joints = joints;
    this.geometry = geometry;
    JointTuning.Foot foot = JointTuning.builtIn().foot();
    double middle = Math.max(foot.halvesAt() * geometry.heelY(), foot.halvesMost());
    this.toeHalf = new Half(middle, foot.halvesFrom());
    this.heelHalf = new Half(Math.max(foot.ofHeel() * geometry.heelY(), foot.most()), middle);
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
    private final TopFit fit;

    Half(double from, double to) {
      this.from = from;
      this.to = to;
      this.fit =
          new TopFit(
              joints.stream()
                  .map(it -> profiles(it.light(), it.redGreen(), it.yellowBlue()))
                  .toList(),
              geometry.leadHalf());
    }

    double middle() {
      return (from + to) / 2;
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
      return fit.scores(
          profiles(joint.landLight(), joint.landRedGreen(), joint.landYellowBlue()), steps());
    }
  }
}
