package leadlight.grade;

import leadlight.data.Figure;
import leadlight.model.joint.Familiarity;

/**
 * Whether a photo is of a make on which telling soldered from set down was never shown to work: of
 * such a photo nothing is said of wetting, unless an enrolled bench does.
 */
final class UnknownMake {

  private UnknownMake() {}

  /** Decided by the reader's chance where it was asked, else by that of the measures. */
  static boolean is(Familiarity make, Decision decision) {
    Figure from = make.byReader() ? decision.unfamiliarFrom() : decision.unfamiliarFromByMeasures();
    return make.unfamiliar() >= from.value();
  }
}
