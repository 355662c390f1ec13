package leadlight.model.remark;

/** Why an anchor leg is not judged. */
public sealed interface DoubtOfLeg extends Doubt {

  /**
   * How far solder meets an anchor leg all round may or may not be enough (JCGM 106:2012).
   *
   * @param wettedDeg degrees of 360
   * @param uDeg standard uncertainty
   * @param limitDeg needed
   * @param kept probability that it is enough
   */
  record WettingUndecided(double wettedDeg, double uDeg, double limitDeg, double kept)
      implements DoubtOfLeg {}

  /**
   * Whether solder covers enough of a leg's land cannot be decided.
   *
   * @param covered share covered
   * @param uShare standard uncertainty
   * @param limit share needed
   * @param kept probability that it is enough
   */
  record CoverUndecided(double covered, double uShare, double limit, double kept)
      implements DoubtOfLeg {}

  /** From the component side faults are called, and nothing is vouched for. */
  record ComponentSide() implements DoubtOfLeg {}

  /**
   * The photo looks as the component side does, where a shell lies beside the legs, though it was
   * said to show the solder side.
   *
   * @param chance how likely it does, mean over its legs
   */
  record ShellInView(double chance) implements DoubtOfLeg {}

  /**
   * Too few pixels for a leg.
   *
   * @param landPx length of its land
   * @param neededPx from which legs are judged
   */
  record LegTooSmall(double landPx, double neededPx) implements DoubtOfLeg {}

  /**
   * A leg's land hardly shows.
   *
   * @param match share of its outline that is an edge
   */
  record LegHidden(double match) implements DoubtOfLeg {}

  /**
   * A leg's land is burnt out: full light shows neither gap nor edge.
   *
   * @param share of the land, hole included
   */
  record LegBurntOut(double share) implements DoubtOfLeg {}

  /** The limits in use say nothing of anchor legs on this side. */
  record NoLegLimit() implements DoubtOfLeg {}

  /** The land of a leg is cut off by the frame. */
  record LegCropped() implements DoubtOfLeg {}

  /** No photo shows this leg from the solder side. */
  record LegNotShown() implements DoubtOfLeg {}
}
