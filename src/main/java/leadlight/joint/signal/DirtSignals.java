package leadlight.joint.signal;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Zone;
import leadlight.joint.dirt.DirtLimits;
import leadlight.joint.dirt.PitFinder;
import leadlight.joint.dirt.RowCells;
import leadlight.joint.dirt.Spot;
import leadlight.joint.dirt.SpotFinder;
import leadlight.joint.dirt.StainFinder;
import leadlight.numeric.Quantiles;

/**
 * Residue, solder balls and pits of a row, joint by joint.
 *
 * @param residue square pitches of brown film beside joint i, times its depth
 * @param balls solder balls beside or ahead of joint i
 * @param pits depth of the deepest pit in joint i's toe fillet, share of the range
 */
public record DirtSignals(double[] residue, List<List<Spot>> balls, double[] pits) {

  public static DirtSignals of(RowSignals row, DirtLimits limits) {
    int joints = row.patches().size();
    if (joints < limits.leastJoints().value()) {
      return new DirtSignals(new double[joints], perJoint(joints), new double[joints]);
    }
    List<LevelledPatch> levelled = row.straight().levelled();
    RowCells cells = new RowCells(levelled, row.geometry(), limits.beyondLand().value());
    StainFinder stains =
        new StainFinder(cells, limits.stain(), row.light().dark() / row.light().range());
    List<Spot> spots =
        new SpotFinder(cells, metal(levelled, row.geometry()), limits.spot().strange().value())
            .find();
    return new DirtSignals(
        stains.amounts(),
        balls(spots, stains, cells, limits),
        new PitFinder(cells, limits.pit()).depths());
  }

  /** A ball in a gap concerns the joints on both sides, one ahead of a land that joint. */
  private static List<List<Spot>> balls(
      List<Spot> spots, StainFinder stains, RowCells cells, DirtLimits limits) {
    List<List<Spot>> balls = perJoint(cells.joints());
    for (Spot spot : spots) {
      boolean stained = stains.depth(spot.x(), spot.y()) >= limits.stain().depth().value();
      if (!stained && spot.ballLike(limits.spot())) {
        int nearest = spot.x() / RowCells.CELL;
        balls.get(nearest).add(spot);
        int other = nearest + (RowCells.acrossLand(spot.x()) < 0 ? -1 : 1);
        if (cells.besideLand(spot.x()) && other >= 0 && other < balls.size()) {
          balls.get(other).add(spot);
        }
      }
    }
    return balls;
  }

  private static List<List<Spot>> perJoint(int joints) {
    List<List<Spot>> lists = new ArrayList<>();
    for (int i = 0; i < joints; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  /** Colour of the row's metal: median of the lead tops. */
  static double[] metal(List<LevelledPatch> joints, RowGeometry geometry) {
    double lead = 0.8 * geometry.leadHalf();
    double[][] tops = new double[3][joints.size()];
    for (int i = 0; i < joints.size(); i++) {
      LevelledPatch joint = joints.get(i);
      tops[0][i] = new Zone(joint.light(), -lead, lead, -0.8, -0.1).median();
      tops[1][i] = new Zone(joint.redGreen(), -lead, lead, -0.8, -0.1).median();
      tops[2][i] = new Zone(joint.yellowBlue(), -lead, lead, -0.8, -0.1).median();
    }
    return new double[] {
      Quantiles.middle(tops[0]), Quantiles.middle(tops[1]), Quantiles.middle(tops[2])
    };
  }
}
