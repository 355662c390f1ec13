package leadlight.scene.plan;

/**
 * One joint.
 *
 * @param condition what became of it
 * @param fill the solder
 * @param pose where the lead stands
 * @param wetting which part of the foot the solder holds
 * @param pitMm radius of a pit in the toe fillet, 0 for none
 * @param torn the land is gone: bare laminate under the lead
 * @param landRaisedMm how far the land's toe end has come off the laminate, with all that it
 *     carries; null where the land lies
 */
public record JointPlan(
    Condition condition,
    Fill fill,
    Pose pose,
    Wetting wetting,
    double pitMm,
    boolean torn,
    Double landRaisedMm) {

  /** What a land may rise before solder or foil would part. Common practice, no source. */
  private static final double LEAST_RAISED_MM = 0.01;

  private static final double MOST_RAISED_MM = 0.2;

  /** Refuses a land raised by nothing or by more than solder would bear, and one that is gone. */
  public JointPlan {
    if (landRaisedMm != null) {
      if (!(landRaisedMm >= LEAST_RAISED_MM && landRaisedMm <= MOST_RAISED_MM)) {
        throw new IllegalArgumentException(
            "land_raised_mm must lie between %s and %s, or be left out where the land lies; is %s"
                .formatted(LEAST_RAISED_MM, MOST_RAISED_MM, landRaisedMm));
      }
      if (torn) {
        throw new IllegalArgumentException(
            "a torn land is gone and cannot be raised: leave land_raised_mm out, or torn false");
      }
    }
  }

  /**
   * Solder on a land.
   *
   * @param solder false leaves the land's finish bare
   * @param pressurePerMm mean curvature times two: below 0 hollow, above 0 domed
   * @param climb height of the solder on the lead's walls, share of its upper side's height
   * @param filmMm least solder thickness on wetted land
   * @param spreadMm how far solder bulges over the land's edge
   */
  public record Fill(
      boolean solder, double pressurePerMm, double climb, double filmMm, double spreadMm) {

    public Fill withPressure(double newPressurePerMm) {
      return new Fill(solder, newPressurePerMm, climb, filmMm, spreadMm);
    }
  }

  /**
   * Place of a lead.
   *
   * @param gapMm solder between land and lead
   * @param shiftMm lead off the land's middle
   * @param skewRad turn of the foot about its heel
   * @param liftMm lead above its seat
   * @param toeUpRad foot rising towards the toe
   * @param rollRad lean of the foot's top to the side; too small to move anything but the light
   */
  public record Pose(
      double gapMm,
      double shiftMm,
      double skewRad,
      double liftMm,
      double toeUpRad,
      double rollRad) {}

  /**
   * The wetted part of a foot.
   *
   * @param from its start, share of the foot from its toe
   * @param to its end
   * @param sideBare -1 or 1: that side of the lead is bare; 0 none
   */
  public record Wetting(double from, double to, int sideBare) {
    public static final Wetting WHOLE = new Wetting(0, 1, 0);

    public boolean whole() {
      return sideBare == 0 && from <= 0 && to >= 1;
    }
  }

  public JointPlan with(Condition newCondition, Fill newFill) {
    return new JointPlan(newCondition, newFill, pose, wetting, pitMm, torn, landRaisedMm);
  }

  public JointPlan withPose(Pose newPose) {
    return new JointPlan(condition, fill, newPose, wetting, pitMm, torn, landRaisedMm);
  }

  public JointPlan withPlace(double shiftMm, double skewRad) {
    return withPose(
        new Pose(pose.gapMm, shiftMm, skewRad, pose.liftMm, pose.toeUpRad, pose.rollRad));
  }

  public JointPlan withWetted(double from, double to, int sideBare) {
    return new JointPlan(
        condition, fill, pose, new Wetting(from, to, sideBare), pitMm, torn, landRaisedMm);
  }

  public JointPlan withPit(double radiusMm) {
    return new JointPlan(condition, fill, pose, wetting, radiusMm, torn, landRaisedMm);
  }

  public JointPlan withoutLand() {
    return new JointPlan(condition, fill, pose, wetting, pitMm, true, null);
  }

  public JointPlan withLandRaised(Double byMm) {
    return new JointPlan(condition, fill, pose, wetting, pitMm, torn, byMm);
  }
}
