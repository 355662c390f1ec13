package leadlight.model.remark;

import java.util.OptionalDouble;

/**
 * What is to be said of a joint: what was measured of a finding, what "acceptable" rests on, what
 * people and the bench said.
 */
public sealed interface NoteOfJoint extends Note {

  // What was measured of a finding.

  /**
   * A film beside the land.
   *
   * @param squarePitches area times depth
   */
  record Film(double squarePitches) implements NoteOfJoint {}

  /**
   * A round bright spot.
   *
   * @param widthPitch width
   * @param brighter than the board, share of the row's range of light
   */
  record Ball(double widthPitch, double brighter) implements NoteOfJoint {}

  /**
   * A dark pit ahead of the toe.
   *
   * @param darker than its rim, share of the row's range of light
   */
  record Pit(double darker) implements NoteOfJoint {}

  /**
   * Metal that crosses a gap.
   *
   * @param share of what cannot be avoided on any way through the gap, from the board's colour (0)
   *     to that of the leads' metal (1)
   */
  record MetalAcross(double share) implements NoteOfJoint {}

  /**
   * A length held against a limit.
   *
   * @param valueMm measured
   * @param uMm standard uncertainty
   * @param limitMm the limit
   */
  record AgainstLimit(double valueMm, double uMm, double limitMm) implements NoteOfJoint {}

  /**
   * An angle held against a limit.
   *
   * @param valueDeg measured
   * @param uDeg standard uncertainty
   * @param limitDeg the limit
   */
  record Turned(double valueDeg, double uDeg, double limitDeg) implements NoteOfJoint {}

  // What "acceptable" rests on.

  /**
   * A lead was seen on its land.
   *
   * @param chance that there is none
   */
  record LeadSeen(double chance) implements NoteOfJoint {}

  /**
   * Toe and land end stand apart by enough to see a fillet between them.
   *
   * @param aheadMm land ahead of the toe
   */
  record RoomForFillet(double aheadMm) implements NoteOfJoint {}

  /**
   * A fillet was seen at this joint.
   *
   * @param measures chance that there is none, by the measures, if they count
   * @param reader the same by the second reader, if it was asked
   */
  record FilletSeen(OptionalDouble measures, OptionalDouble reader) implements NoteOfJoint {}

  /**
   * The joint is like joints that the second reader knows.
   *
   * @param strangeness 0 (like them) to 1
   */
  record LikeKnown(double strangeness) implements NoteOfJoint {}

  /**
   * The photo is of a make on which telling soldered from set down was shown to work.
   *
   * @param unfamiliar chance that it is not
   */
  record FamiliarPhoto(double unfamiliar) implements NoteOfJoint {}

  // What people and the bench said of a joint.

  /**
   * A person's opinion of a joint.
   *
   * @param person who
   * @param reason why, in the person's words
   */
  record PersonSaid(String person, String reason) implements NoteOfJoint {}

  /**
   * The lead moved under the probe.
   *
   * @param person who tried it
   */
  record ProdMoved(String person) implements NoteOfJoint {}

  /**
   * The lead held under the probe.
   *
   * @param person who tried it
   */
  record ProdHeld(String person) implements NoteOfJoint {}

  /**
   * The meter found no connection.
   *
   * @param person who metered
   */
  record MeterOpen(String person) implements NoteOfJoint {}

  /**
   * The meter found a connection where there must be none.
   *
   * @param neighbourPin the other probe's pin; 0 if it was not said
   * @param person who metered
   */
  record MeterShort(int neighbourPin, String person) implements NoteOfJoint {}

  /**
   * The meter found what there should be.
   *
   * @param neighbourPin the other probe's pin; 0 if it was put to the joint alone
   * @param person who metered
   */
  record MeterOk(int neighbourPin, String person) implements NoteOfJoint {}

  /**
   * Words of a scoring from before notes had codes.
   *
   * @param words as they were written then
   */
  record Earlier(String words) implements NoteOfJoint {}
}
