package leadlight.trial.truth;

import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;

/**
 * What is true of a rendered picture; of all this the tool under trial is told only {@code leads}
 * and {@code pitchMm}, or the connector where the row is of one.
 *
 * @param photo file name
 * @param connector id of the connector that the row is of
 * @param leads number of leads
 * @param pitchMm pitch
 * @param landsAtMm places of the lands along the row, pin 1 at 0
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
    Optional<String> connector,
    int leads,
    double pitchMm,
    List<Double> landsAtMm,
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
    landsAtMm = List.copyOf(landsAtMm);
    if (leads < 3 || joints.size() != leads) {
      throw new IllegalArgumentException(
          "a row of " + leads + " leads needs as many joints (3 or more), has " + joints.size());
    }
    if (landsAtMm.size() != leads) {
      throw new IllegalArgumentException("a row needs a place for each of its lands");
    }
    for (int i = 0; i < leads; i++) {
      if (joints.get(i).pin() != i + 1) {
        throw new IllegalArgumentException("joint " + (i + 1) + " is out of order");
      }
    }
  }

  /** Pitch in the picture on the mean, by the lands of the first and the last pin. */
  public double pitchPx() {
    return first().distanceTo(last()) * pitchMm / landsAtMm.get(leads - 1);
  }

  /** Direction from pin 1 to pin N, x right, y down. */
  public double angleRad() {
    return Math.atan2(last().y() - first().y(), last().x() - first().x());
  }

  /** Which normal of the row leads away from the body; see {@link Directions}. */
  public double outwards() {
    return Directions.outwards(angleRad(), towardsBodyPx);
  }

  private PointPx first() {
    return joints.get(0).landToePx();
  }

  private PointPx last() {
    return joints.get(leads - 1).landToePx();
  }
}
