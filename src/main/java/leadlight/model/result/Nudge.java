package leadlight.model.result;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.PointPx;
import leadlight.model.remark.Note;

/**
 * What pushing the leads of a row showed.
 *
 * @param photos the photos in which leads were pushed, in the order given
 * @param leads one a lead, pin 1 first
 */
public record Nudge(List<Pushed> photos, List<Moved> leads) {

  /** Copies the lists. */
  public Nudge {
    photos = List.copyOf(photos);
    leads = List.copyOf(leads);
  }

  /** What a lead does when it is pushed. */
  public enum Motion {
    MOVES,
    FIRM,
    NOT_TOUCHED,
    CANNOT_TELL;

    /** The name in files: "not touched". */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * A photo in which a lead is pushed.
   *
   * @param file its name
   * @param sha256 hash of its bytes
   * @param touchedPin the lead that the pick touches, if that shows
   * @param tipPx the pick's tip in the photo at rest, if it was found
   * @param reason why the photo says nothing, if so
   */
  public record Pushed(
      String file,
      String sha256,
      OptionalInt touchedPin,
      Optional<PointPx> tipPx,
      Optional<Note> reason) {}

  /**
   * What a lead did.
   *
   * @param pin the lead
   * @param motion what it did
   * @param shiftUm shift of its toe across the lead against its land, micrometres, towards pin N
   *     positive; known if it was touched
   * @param uUm standard uncertainty of the shift
   * @param smallestSeenUm the smallest movement that would have shown in that photo, micrometres
   * @param photo the photo that says so
   * @param reason why it cannot be told, if so
   */
  public record Moved(
      int pin,
      Motion motion,
      OptionalDouble shiftUm,
      OptionalDouble uUm,
      OptionalDouble smallestSeenUm,
      Optional<String> photo,
      Optional<Note> reason) {

    /** A lead that no photo shows touched. */
    public static Moved notTouched(int pin) {
      return new Moved(
          pin,
          Motion.NOT_TOUCHED,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty());
    }
  }
}
