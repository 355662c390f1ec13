package leadlight.joint.place;

import leadlight.joint.cut.Signals;
import leadlight.model.row.Lead;

/**
 * One lead where it is, in the photo and on the board.
 *
 * @param lead in the photo, with the uncertainties of its toe
 * @param toe how far the toe stands off its land's middle on the board
 * @param end the same at the foot's other end
 * @param toeAhead how far the toe lies ahead of where the joint was cut by, pitches
 * @param lengthPitches from the toe to the foot's other end
 * @param signals what this rests on
 */
public record PlacedLead(
    Lead lead, Shift toe, Shift end, double toeAhead, double lengthPitches, Signals signals) {

  /**
   * A shift across the lead, pitches, positive towards pin N.
   *
   * @param pitches how far
   * @param u standard uncertainty
   */
  public record Shift(double pitches, double u) {}

  /** The end of the foot that stands farther off. */
  public Shift farther() {
    return Math.abs(toe.pitches) >= Math.abs(end.pitches) ? toe : end;
  }
}
