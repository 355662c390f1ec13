package leadlight.trial.truth;

import leadlight.model.PointPx;

/** Directions of a row in a picture. */
final class Directions {

  private Directions() {}

  /**
   * The side of the row on which the toes are: (-sin a, cos a), a being the row's angle, times this
   * (1 or -1) leads away from the body.
   */
  static double outwards(double angleRad, PointPx towardsBody) {
    double cross = -Math.sin(angleRad) * towardsBody.x() + Math.cos(angleRad) * towardsBody.y();
    return cross > 0 ? -1 : 1;
  }
}
