package leadlight.trial;

import java.util.List;
import leadlight.model.PointPx;

/**
 * What is true of a rendered picture; of all this the tool under trial is told only {@code leads}
 * and {@code pitchMm}.
 *
 * @param photo file name
 * @param leads number of leads
 * @param pitchMm pitch
 * @param leadWidthMm width of a lead
 * @param landLengthMm length of a land
 * @param landAheadOfToeMm how far the land runs ahead of the toe
 * @param lamp kind of light, as "ring"
 * @param mask colour of the solder mask
 * @param edgeBlurPx blur of an edge, standard deviation
 * @param tiltRad tilt of the board against the view axis
 * @param towardsBodyPx direction to the body, any length
 * @param joints the joints, pin 1 first
 */
public record PhotoTruth(
    String photo,
    int leads,
    double pitchMm,
    double leadWidthMm,
    double landLengthMm,
    double landAheadOfToeMm,
    String lamp,
    String mask,
    double edgeBlurPx,
    double tiltRad,
    PointPx towardsBodyPx,
    List<JointTruth> joints) {

  /** Copies the list; there must be a joint for each lead, at least three, in order. */
  public PhotoTruth {
    joints = List.copyOf(joints);
    if (leads < 3 || joints.size() != leads) {
      throw new IllegalArgumentException(
          "a row of " + leads + " leads needs as many joints (3 or more), has " + joints.size());
    }
    for (int i = 0; i < leads; i++) {
      if (joints.get(i).pin() != i + 1) {
        throw new IllegalArgumentException("joint " + (i + 1) + " is out of order");
      }
    }
  }

  /** Mean pitch in the picture, by the lands of the first and the last pin. */
  public double pitchPx() {
    return first().distanceTo(last()) / (leads - 1);
  }

  /** Direction from pin 1 to pin N, x right, y down. */
  public double angleRad() {
    return Math.atan2(last().y() - first().y(), last().x() - first().x());
  }

  /** Which normal of the row leads away from the body; see {@link Directions}. */
  double outwards() {
    return Directions.outwards(angleRad(), towardsBodyPx);
  }

  private PointPx first() {
    return joints.get(0).landToePx();
  }

  private PointPx last() {
    return joints.get(leads - 1).landToePx();
  }
}
