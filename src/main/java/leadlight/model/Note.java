package leadlight.model;

import java.util.OptionalDouble;

/**
 * What is to be said of a photo, a row or a finding: why no row was found, what to change, what was
 * measured, what a verdict rests on, what to mind at the bench.
 */
public sealed interface Note extends Remark {

  // Why there is no row.

  /**
   * No row shows.
   *
   * @param leads leads asked for
   */
  record NoRow(int leads) implements Note {}

  /**
   * Nothing looks enough like leads.
   *
   * @param leads leads asked for
   */
  record NotLikeLeads(int leads) implements Note {}

  /** Something repeats at the pitch, but it shows no joints. */
  record NoJoints() implements Note {}

  /**
   * The row is cut off by the frame.
   *
   * @param leads leads asked for
   */
  record RowCropped(int leads) implements Note {}

  /**
   * The leads are too close together in the picture.
   *
   * @param leastPx pixels a pitch from which anything is judged
   */
  record TooSmall(double leastPx) implements Note {}

  /**
   * Another number of leads shows than was said.
   *
   * @param leads leads asked for
   * @param shown leads that show
   */
  record OtherCount(int leads, int shown) implements Note {}

  /**
   * The row goes on beyond the leads asked for, how far does not show.
   *
   * @param leads leads asked for
   */
  record MoreLeads(int leads) implements Note {}

  /**
   * The row is shorter than was asked for, by how much does not show.
   *
   * @param leads leads asked for
   */
  record FewerLeads(int leads) implements Note {}

  /**
   * Two rows fit.
   *
   * @param leads leads asked for
   */
  record TwoRows(int leads) implements Note {}

  /** The body's side does not show. */
  record BodySideUnknown() implements Note {}

  /** The middles of the leads do not show exactly. */
  record MiddlesUnknown() implements Note {}

  // What is to be said of a found row.

  /** How far solder fills a leg's hole does not show from either side. */
  record HoleFill() implements Note {}

  /** What a lump of solder hides: the hole's edge and the ring under it. */
  record UnderLump() implements Note {}

  /** The other side of the board has limits of its own. */
  record OtherSide() implements Note {}

  /**
   * In which order to prod the leads that are not judged.
   *
   * @param pins the most suspect first
   */
  record ProdOrder(String pins) implements Note {}

  /**
   * Limits were decided with another guard band than that of their file.
   *
   * @param level probability from which a limit counts as kept, or as passed
   * @param bandU the band on either side of a limit, standard uncertainties
   * @param passedAtLimit share accepted of joints that lie exactly at the limit
   * @param leftInside share not accepted of joints that lie 3 standard uncertainties inside it
   * @param undecided limits of this row that are neither kept nor passed
   * @param usualLevel the level of the limits file
   * @param usuallyUndecided the row's undecided limits by that level
   */
  record GuardBand(
      double level,
      double bandU,
      double passedAtLimit,
      double leftInside,
      int undecided,
      double usualLevel,
      int usuallyUndecided)
      implements Note {}

  /** All joints look alike and none is surely soldered: sameness is no proof. */
  record AlikeThroughout() implements Note {}

  /** The photo is of a make on which telling soldered from set down was never shown to work. */
  record Unfamiliar() implements Note {}

  /**
   * The row was judged as enrolled.
   *
   * @param bench the bench's name
   * @param version of its enrolment
   * @param unsoldered unsoldered joints that were shown
   * @param photos photos in which they were shown
   * @param upTo share of such joints that may lie below the least of those shown, with 95 %
   *     confidence
   */
  record AsEnrolled(String bench, int version, int unsoldered, int photos, double upTo)
      implements Note {}

  /**
   * The bench has not shown enough to vouch for anything.
   *
   * @param bench the bench's name
   * @param version of its enrolment
   */
  record NotYetEnrolled(String bench, int version) implements Note {}

  /**
   * The photo is not as those were that the bench was enrolled by.
   *
   * @param bench the bench's name
   * @param version of its enrolment
   * @param why in which respect: "scale", "focus", "light", "make", "shade" or "colour"
   */
  record NotAsEnrolled(String bench, int version, String why) implements Note {}

  /**
   * The joint looks more soldered than each joint that was shown unsoldered on this bench.
   *
   * @param bench the bench's name
   * @param chance that nothing holds it, by the bench's line
   */
  record SolderedByBench(String bench, double chance) implements Note {}

  /**
   * The joint looks less soldered than each joint that was shown sound on this bench.
   *
   * @param bench the bench's name
   */
  record UnsolderedByBench(String bench) implements Note {}

  // The photo.

  /** No clear edge anywhere. */
  record NoEdges() implements Note {}

  /**
   * Edges are soft for the row's pitch: coarse faults alone still show.
   *
   * @param blurPx edge sigma
   * @param blurPitch the same in pitches
   * @param closer true if more pixels for the row help, false if focus or resolution must
   */
  record SoftForPitch(double blurPx, double blurPitch, boolean closer) implements Note {}

  /**
   * Edges are soft for the picture's own pixels.
   *
   * @param blurPx edge sigma
   * @param times how many times smaller the picture would show as much
   */
  record SoftForPixels(double blurPx, double times) implements Note {}

  /**
   * Too much is burnt out.
   *
   * @param burntShare share of the picture
   */
  record BurntOut(double burntShare) implements Note {}

  /**
   * Too much is black.
   *
   * @param blackShare share of the picture
   */
  record Black(double blackShare) implements Note {}

  /** Little contrast. */
  record LowContrast() implements Note {}

  /** Noisy. */
  record Noisy() implements Note {}

  /**
   * The file's name says another format.
   *
   * @param format what it is by its content, as "PNG"
   */
  record OtherFormat(String format) implements Note {}

  /**
   * Only the first of several pages was read.
   *
   * @param pages how many there are
   */
  record FirstPageOnly(int pages) implements Note {}

  /**
   * A 16-bit picture that uses fewer bits; it was stretched.
   *
   * @param bits that it uses
   */
  record FewBits(int bits) implements Note {}

  /** A very large picture that was read at half size. */
  record HalfSize() implements Note {}

  // What was measured of a finding.

  /**
   * A film beside the land.
   *
   * @param squarePitches area times depth
   */
  record Film(double squarePitches) implements Note {}

  /**
   * A round bright spot.
   *
   * @param widthPitch width
   * @param brighter than the board, share of the row's range of light
   */
  record Ball(double widthPitch, double brighter) implements Note {}

  /**
   * A dark pit ahead of the toe.
   *
   * @param darker than its rim, share of the row's range of light
   */
  record Pit(double darker) implements Note {}

  /**
   * A length held against a limit.
   *
   * @param valueMm measured
   * @param uMm standard uncertainty
   * @param limitMm the limit
   */
  record AgainstLimit(double valueMm, double uMm, double limitMm) implements Note {}

  /**
   * An angle held against a limit.
   *
   * @param valueDeg measured
   * @param uDeg standard uncertainty
   * @param limitDeg the limit
   */
  record Turned(double valueDeg, double uDeg, double limitDeg) implements Note {}

  // What "acceptable" rests on.

  /**
   * A lead was seen on its land.
   *
   * @param chance that there is none
   */
  record LeadSeen(double chance) implements Note {}

  /**
   * Toe and land end stand apart by enough to see a fillet between them.
   *
   * @param aheadMm land ahead of the toe
   */
  record RoomForFillet(double aheadMm) implements Note {}

  /**
   * A fillet was seen at this joint.
   *
   * @param measures chance that there is none, by the measures, if they count
   * @param reader the same by the second reader, if it was asked
   */
  record FilletSeen(OptionalDouble measures, OptionalDouble reader) implements Note {}

  /**
   * The joint is like joints that the second reader knows.
   *
   * @param strangeness 0 (like them) to 1
   */
  record LikeKnown(double strangeness) implements Note {}

  /**
   * The photo is of a make on which telling soldered from set down was shown to work.
   *
   * @param unfamiliar chance that it is not
   */
  record FamiliarPhoto(double unfamiliar) implements Note {}

  // What every report must say.

  /**
   * A sentence of {@code models/advice.json}.
   *
   * @param id which
   * @param leads leads of the row
   */
  record Advice(String id, int leads) implements Note {}

  // The nudge, and other photos of the same row.

  /**
   * Another photo does not show this row as this one does.
   *
   * @param likeness correlation of the two, evened out
   */
  record OtherRow(double likeness) implements Note {}

  /** No pick reaches the row in this photo. */
  record NoPick() implements Note {}

  /**
   * The connector moved as a whole against its lands.
   *
   * @param shiftUm median shift of the leads that nobody touched
   */
  record RowMoved(double shiftUm) implements Note {}

  /** Two positions of the lead explain the photo about equally well. */
  record MotionUnclear() implements Note {}

  /**
   * The shift lies between what a soldered lead yields and what a loose one moves.
   *
   * @param shiftUm measured
   * @param uUm standard uncertainty
   */
  record MotionBetween(double shiftUm, double uUm) implements Note {}

  /**
   * The lead moved when it was pushed.
   *
   * @param shiftUm how far its toe moved
   * @param uUm standard uncertainty
   */
  record Moves(double shiftUm, double uUm) implements Note {}

  /**
   * The lead held when it was pushed.
   *
   * @param toUm how far it may have moved at most, 95 %
   */
  record Firm(double toUm) implements Note {}

  /**
   * The joint is as it was before any iron.
   *
   * @param soldered chance that solder came all the same
   */
  record Unchanged(double soldered) implements Note {}

  /**
   * Whether solder came does not show in the two photos.
   *
   * @param soldered chance that it did
   */
  record ChangeUnclear(double soldered) implements Note {}

  /** What cannot have changed looks so different in two photos that no change of solder shows. */
  record OtherLight() implements Note {}

  /** A land that is torn off the board may hold a lead firmly and join it to nothing. */
  record TornLand() implements Note {}

  // What people and the bench said of a joint.

  /**
   * A person's opinion of a joint.
   *
   * @param person who
   * @param reason why, in the person's words
   */
  record PersonSaid(String person, String reason) implements Note {}

  /**
   * The lead moved under the probe.
   *
   * @param person who tried it
   */
  record ProdMoved(String person) implements Note {}

  /**
   * The lead held under the probe.
   *
   * @param person who tried it
   */
  record ProdHeld(String person) implements Note {}

  /**
   * The meter found no connection.
   *
   * @param person who metered
   */
  record MeterOpen(String person) implements Note {}

  /**
   * The meter found a connection where there must be none.
   *
   * @param neighbourPin the other probe's pin; 0 if it was not said
   * @param person who metered
   */
  record MeterShort(int neighbourPin, String person) implements Note {}

  /**
   * The meter found what there should be.
   *
   * @param neighbourPin the other probe's pin; 0 if it was put to the joint alone
   * @param person who metered
   */
  record MeterOk(int neighbourPin, String person) implements Note {}

  /**
   * Words of a scoring from before notes had codes.
   *
   * @param words as they were written then
   */
  record Earlier(String words) implements Note {}
}
