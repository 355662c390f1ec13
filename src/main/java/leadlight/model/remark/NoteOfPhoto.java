package leadlight.model.remark;

/** What is to be said of a photo, of others beside it, and of every report. */
public sealed interface NoteOfPhoto extends Note {

  // The photo.

  /** No clear edge anywhere. */
  record NoEdges() implements NoteOfPhoto {}

  /**
   * Edges are soft for the row's pitch: coarse faults alone still show.
   *
   * @param blurPx edge sigma
   * @param blurPitch the same in pitches
   * @param closer true if more pixels for the row help, false if focus or resolution must
   */
  record SoftForPitch(double blurPx, double blurPitch, boolean closer) implements NoteOfPhoto {}

  /**
   * Edges are soft for the picture's own pixels.
   *
   * @param blurPx edge sigma
   * @param times how many times smaller the picture would show as much
   */
  record SoftForPixels(double blurPx, double times) implements NoteOfPhoto {}

  /**
   * Too much is burnt out.
   *
   * @param burntShare share of the picture
   */
  record BurntOut(double burntShare) implements NoteOfPhoto {}

  /**
   * Too much is black.
   *
   * @param blackShare share of the picture
   */
  record Black(double blackShare) implements NoteOfPhoto {}

  /** Little contrast. */
  record LowContrast() implements NoteOfPhoto {}

  /** Noisy. */
  record Noisy() implements NoteOfPhoto {}

  /**
   * The file's name says another format.
   *
   * @param format what it is by its content, as "PNG"
   */
  record OtherFormat(String format) implements NoteOfPhoto {}

  /**
   * Only the first of several pages was read.
   *
   * @param pages how many there are
   */
  record FirstPageOnly(int pages) implements NoteOfPhoto {}

  /**
   * A 16-bit picture that uses fewer bits; it was stretched.
   *
   * @param bits that it uses
   */
  record FewBits(int bits) implements NoteOfPhoto {}

  /** A very large picture that was read at half size. */
  record HalfSize() implements NoteOfPhoto {}

  // What every report must say.

  /**
   * A sentence of {@code models/advice.json}.
   *
   * @param id which
   * @param leads leads of the row
   */
  record Advice(String id, int leads) implements NoteOfPhoto {}

  // The nudge, and other photos of the same row.

  /**
   * Another photo does not show this row as this one does.
   *
   * @param likeness correlation of the two, evened out
   */
  record OtherRow(double likeness) implements NoteOfPhoto {}

  /**
   * A frame of a burst does not show the view of the others.
   *
   * @param likeness correlation of the two, evened out
   */
  record OtherView(double likeness) implements NoteOfPhoto {}

  /** No pick reaches the row in this photo. */
  record NoPick() implements NoteOfPhoto {}

  /**
   * The connector moved as a whole against its lands.
   *
   * @param shiftUm median shift of the leads that nobody touched
   */
  record RowMoved(double shiftUm) implements NoteOfPhoto {}

  /**
   * The lead named held still, but the one on the pick's other side may have been pushed instead.
   *
   * @param pin the other lead
   */
  record OtherMayYield(int pin) implements NoteOfPhoto {}

  /** Two positions of the lead explain the photo about equally well. */
  record MotionUnclear() implements NoteOfPhoto {}

  /**
   * The shift lies between what a soldered lead yields and what a loose one moves.
   *
   * @param shiftUm measured
   * @param uUm standard uncertainty
   */
  record MotionBetween(double shiftUm, double uUm) implements NoteOfPhoto {}

  /**
   * The lead moved when it was pushed.
   *
   * @param shiftUm how far its toe moved
   * @param uUm standard uncertainty
   */
  record Moves(double shiftUm, double uUm) implements NoteOfPhoto {}

  /**
   * The lead held when it was pushed.
   *
   * @param toUm how far it may have moved at most, 95 %
   */
  record Firm(double toUm) implements NoteOfPhoto {}

  /**
   * The joint is as it was before any iron.
   *
   * @param soldered chance that solder came all the same
   */
  record Unchanged(double soldered) implements NoteOfPhoto {}

  /**
   * Whether solder came does not show in the two photos.
   *
   * @param soldered chance that it did
   */
  record ChangeUnclear(double soldered) implements NoteOfPhoto {}

  /** The joint, or a side of it, does not show in both photos. */
  record ChangeNotSeen() implements NoteOfPhoto {}

  /** What cannot have changed looks so different in two photos that no change of solder shows. */
  record OtherLight() implements NoteOfPhoto {}

  /** A land that is torn off the board may hold a lead firmly and join it to nothing. */
  record TornLand() implements NoteOfPhoto {}
}
