package leadlight.enrol;

import java.util.ArrayList;
import java.util.List;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Shown;

/**
 * Joints that look like the other kind to the photos that they are not of: a row of the wrong name,
 * or a lead that somebody did not see. Looked at by the line of the others at even odds; nothing is
 * taken out, for such a joint may be right, and only moves borders to where less is judged.
 */
public final class OddOnes {

  private OddOnes() {}

  /**
   * One of them.
   *
   * @param file its photo
   * @param pin its pin
   * @param soldered what it was shown as
   */
  public record Odd(String file, int pin, boolean soldered) {}

  /** All of them, in the order of photos and pins. */
  public static List<Odd> of(Enrolment enrolment) {
    List<Odd> odd = new ArrayList<>();
    for (Fold fold : enrolment.lines()) {
      for (Shown joint : enrolment.leads()) {
        boolean soldered = fold.line().of(joint.general(), joint.features()) < 0;
        if (joint.photo() == fold.photo() && soldered != joint.soldered()) {
          odd.add(
              new Odd(enrolment.photos().get(joint.photo()).file(), joint.pin(), joint.soldered()));
        }
      }
    }
    return odd;
  }
}
