package leadlight.model.remark;

/** What is to be said of a row: why there is none, what to mind of a found one. */
public sealed interface NoteOfRow extends Note {

  // Why there is no row.

  /**
   * No row shows.
   *
   * @param leads leads asked for
   */
  record NoRow(int leads) implements NoteOfRow {}

  /**
   * Nothing looks enough like leads.
   *
   * @param leads leads asked for
   */
  record NotLikeLeads(int leads) implements NoteOfRow {}

  /** Something repeats at the pitch, but it shows no joints. */
  record NoJoints() implements NoteOfRow {}

  /**
   * The row is cut off by the frame.
   *
   * @param leads leads asked for
   */
  record RowCropped(int leads) implements NoteOfRow {}

  /**
   * The leads are too close together in the picture.
   *
   * @param leastPx pixels a pitch from which anything is judged
   */
  record TooSmall(double leastPx) implements NoteOfRow {}

  /**
   * Another number of leads shows than was said.
   *
   * @param leads leads asked for
   * @param shown leads that show
   */
  record OtherCount(int leads, int shown) implements NoteOfRow {}

  /**
   * The row goes on beyond the leads asked for, how far does not show.
   *
   * @param leads leads asked for
   */
  record MoreLeads(int leads) implements NoteOfRow {}

  /**
   * The row is shorter than was asked for, by how much does not show.
   *
   * @param leads leads asked for
   */
  record FewerLeads(int leads) implements NoteOfRow {}

  /**
   * Two rows fit.
   *
   * @param leads leads asked for
   */
  record TwoRows(int leads) implements NoteOfRow {}

  /** The body's side does not show. */
  record BodySideUnknown() implements NoteOfRow {}

  /** The middles of the leads do not show exactly. */
  record MiddlesUnknown() implements NoteOfRow {}

  // What is to be said of a found row.

  /** How far solder fills a leg's hole does not show from either side. */
  record HoleFill() implements NoteOfRow {}

  /** What a lump of solder hides: the hole's edge and the ring under it. */
  record UnderLump() implements NoteOfRow {}

  /** The other side of the board has limits of its own. */
  record OtherSide() implements NoteOfRow {}

  /** What is said of legs was shown right on rendered pictures alone. */
  record LegsOfPhotographs() implements NoteOfRow {}

  /**
   * In which order to prod the leads that are not judged.
   *
   * @param pins the most suspect first
   */
  record ProdOrder(String pins) implements NoteOfRow {}

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
      implements NoteOfRow {}

  /** All joints look alike and none is surely soldered: sameness is no proof. */
  record AlikeThroughout() implements NoteOfRow {}

  /** The photo is of a make on which telling soldered from set down was never shown to work. */
  record Unfamiliar() implements NoteOfRow {}

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
      implements NoteOfRow {}

  /**
   * The bench has not shown enough to vouch for anything.
   *
   * @param bench the bench's name
   * @param version of its enrolment
   */
  record NotYetEnrolled(String bench, int version) implements NoteOfRow {}

  /**
   * The photo is not as those were that the bench was enrolled by.
   *
   * @param bench the bench's name
   * @param version of its enrolment
   * @param why in which respect: "scale", "focus", "light", "make", "shade" or "colour"
   */
  record NotAsEnrolled(String bench, int version, String why) implements NoteOfRow {}

  /**
   * The joint looks more soldered than each joint that was shown unsoldered on this bench.
   *
   * @param bench the bench's name
   * @param chance that nothing holds it, by the bench's line
   */
  record SolderedByBench(String bench, double chance) implements NoteOfRow {}

  /**
   * The joint looks less soldered than each joint that was shown sound on this bench.
   *
   * @param bench the bench's name
   */
  record UnsolderedByBench(String bench) implements NoteOfRow {}
}
