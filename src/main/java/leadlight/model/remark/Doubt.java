package leadlight.model.remark;

import java.util.OptionalDouble;
import leadlight.model.FindingKind;

/** Why a joint is not judged. Chances are 0 to 1; pitches are the row's. */
public sealed interface Doubt extends Remark
    permits Doubt.UnfamiliarPhoto,
        Doubt.UnlikeKnown,
        Doubt.Covered,
        Doubt.TooFewPixels,
        Doubt.Blurred,
        Doubt.FocusUnknown,
        Doubt.Glare,
        Doubt.Possible,
        Doubt.OpinionsDiffer,
        Doubt.LimitUndecided,
        Doubt.OverhangUnknown,
        Doubt.ToSettle,
        Doubt.LeadNotSeen,
        Doubt.NoRoomForFillet,
        Doubt.FilletNotSeen,
        Doubt.FirmYetOpen,
        Doubt.FirmAmountUnknown,
        Doubt.RuledOut,
        Doubt.PhotosDiffer,
        Doubt.NotAsEnrolled,
        Doubt.BenchUnsure,
        Doubt.UnlikeShown,
        Doubt.StarvedNotShown,
        Doubt.BenchDiffers,
        Doubt.Earlier,
        DoubtOfLeg {

  /**
   * The photo is of a make on which telling soldered from set down was never shown to work.
   *
   * @param guess chance that nothing holds it, by opinions that were never shown to be right here
   */
  record UnfamiliarPhoto(double guess) implements Doubt {}

  /** The second reader has seen nothing like this joint. */
  record UnlikeKnown() implements Doubt {}

  /** Something lies over the joint. */
  record Covered() implements Doubt {}

  /**
   * Too few pixels for fillets.
   *
   * @param pitchPx pixels a pitch here
   * @param neededPx pixels a pitch from which fillets are judged
   */
  record TooFewPixels(double pitchPx, double neededPx) implements Doubt {}

  /**
   * Too soft for fillets.
   *
   * @param blurPitch edge sigma, pitches
   */
  record Blurred(double blurPitch) implements Doubt {}

  /** No edge at this joint tells how sharp the picture is. */
  record FocusUnknown() implements Doubt {}

  /**
   * Burnt out.
   *
   * @param burntShare share of the joint
   */
  record Glare(double burntShare) implements Doubt {}

  /**
   * A fault that is possible.
   *
   * @param kind which
   * @param neighbourPin the other pin of a bridge, else 0
   * @param chance how likely, by the opinions that count
   * @param measures by the measures alone, if there are two opinions
   * @param reader by the second reader alone, if there are two opinions
   */
  record Possible(
      FindingKind kind,
      int neighbourPin,
      double chance,
      OptionalDouble measures,
      OptionalDouble reader)
      implements Doubt {}

  /**
   * One opinion says rather yes, the other surely no.
   *
   * @param kind to what
   * @param neighbourPin the other pin of a bridge, else 0
   * @param measures chance by the measures
   * @param reader chance by the second reader
   */
  record OpinionsDiffer(FindingKind kind, int neighbourPin, double measures, double reader)
      implements Doubt {}

  /**
   * A limit that may be kept or passed (JCGM 106:2012).
   *
   * @param kind the finding if it is passed
   * @param valueMm measured
   * @param uMm standard uncertainty
   * @param limitMm the limit
   * @param kept probability that it is kept
   */
  record LimitUndecided(FindingKind kind, double valueMm, double uMm, double limitMm, double kept)
      implements Doubt {}

  /** The side overhang was not measured, or there is no width to hold it to. */
  record OverhangUnknown() implements Doubt {}

  /**
   * A finding whose meaning only the bench can settle.
   *
   * @param kind which
   */
  record ToSettle(FindingKind kind) implements Doubt {}

  /**
   * No lead was surely seen on the land.
   *
   * @param chance that there is none
   */
  record LeadNotSeen(double chance) implements Doubt {}

  /**
   * Toe and land end lie too close together to see a fillet between them.
   *
   * @param aheadMm land ahead of the toe
   * @param neededMm from which a fillet would show
   */
  record NoRoomForFillet(double aheadMm, double neededMm) implements Doubt {}

  /**
   * Soldered or merely set down cannot be told: no fillet was surely seen.
   *
   * @param measures chance that there is none, by the measures, if they count
   * @param reader the same by the second reader, if it was asked
   */
  record FilletNotSeen(OptionalDouble measures, OptionalDouble reader) implements Doubt {}

  /**
   * The photo shows an open joint, and yet the lead held when it was pushed.
   *
   * @param toUm how far it may have moved at most, 95 %
   */
  record FirmYetOpen(double toUm) implements Doubt {}

  /**
   * The lead held when it was pushed, so it is not merely set down; how much solder it has, this
   * photo does not show.
   *
   * @param toUm how far it may have moved at most, 95 %
   */
  record FirmAmountUnknown(double toUm) implements Doubt {}

  /**
   * The bench ruled a fault out; what else there may be is still to be looked at.
   *
   * @param kind the fault
   * @param person who tried it
   */
  record RuledOut(FindingKind kind, String person) implements Doubt {}

  /**
   * Of several photos of the row one shows the joint sound and another a fault.
   *
   * @param sound the photo that shows nothing wrong
   * @param kind the fault
   * @param faulty the photo that shows it
   */
  record PhotosDiffer(String sound, FindingKind kind, String faulty) implements Doubt {}

  /**
   * The photo is not as those were that the bench was enrolled by, and without that this make of
   * photo tells nothing of wetting.
   *
   * @param bench the bench's name
   * @param why in which respect: "scale", "focus", "light", "make", "shade" or "colour"
   */
  record NotAsEnrolled(String bench, String why) implements Doubt {}

  /**
   * It looks like joints of either kind that were shown on this bench.
   *
   * @param bench the bench's name
   * @param chance that nothing holds it, by the bench's line
   */
  record BenchUnsure(String bench, double chance) implements Doubt {}

  /**
   * It looks like no joint that was shown on this bench.
   *
   * @param bench the bench's name
   */
  record UnlikeShown(String bench) implements Doubt {}

  /**
   * The bench sees it as soldered, but was shown no starved joints, and on this make of photo
   * nobody else tells them.
   *
   * @param bench the bench's name
   */
  record StarvedNotShown(String bench) implements Doubt {}

  /**
   * The bench says one thing and the general opinions, which count on such a photo, the other.
   *
   * @param bench the bench's name
   * @param soldered true if it is the bench that says soldered
   */
  record BenchDiffers(String bench, boolean soldered) implements Doubt {}

  /**
   * Words of a scoring from before doubts had codes.
   *
   * @param words as they were written then
   */
  record Earlier(String words) implements Doubt {}
}
