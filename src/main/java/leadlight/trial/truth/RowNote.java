package leadlight.trial.truth;

import java.util.List;
import java.util.Map;
import leadlight.model.PointPx;

/**
 * What a person noted of the row in a real photo.
 *
 * @param photo file name
 * @param kind kind of part, for people
 * @param leads number of leads
 * @param pitchPx pitch in the picture
 * @param pitchMm assumed pitch
 * @param uneven true for the USB Type-C row, whose lands are unevenly pitched
 * @param towardsBodyPx direction to the body, any length
 * @param centresPx middle of each lead, pin 1 first; good across the leads, loose along them
 * @param halfLengthPx half the length of a lead in the picture, roughly
 * @param factory true if a factory soldered it
 * @param assembly how it was soldered, for people
 * @param grades what a careful eye says of each lead, by its place from 1; empty if nobody looked
 */
public record RowNote(
    String photo,
    String kind,
    int leads,
    double pitchPx,
    double pitchMm,
    boolean uneven,
    PointPx towardsBodyPx,
    List<PointPx> centresPx,
    double halfLengthPx,
    boolean factory,
    String assembly,
    Map<Integer, Grade> grades) {

  /** What a careful eye says of a joint. */
  public enum Grade {
    GOOD,
    BAD,
    UNSURE
  }

  /** Copies the collections; there must be a middle for each lead, at least three. */
  public RowNote {
    centresPx = List.copyOf(centresPx);
    grades = Map.copyOf(grades);
    if (leads < 3 || centresPx.size() != leads) {
      throw new IllegalArgumentException(
          "a row of " + leads + " leads needs as many middles, has " + centresPx.size());
    }
  }

  /** Direction from pin 1 to pin N, x right, y down. */
  public double angleRad() {
    PointPx first = centresPx.get(0);
    PointPx last = centresPx.get(leads - 1);
    return Math.atan2(last.y() - first.y(), last.x() - first.x());
  }

  /** Which normal of the row leads away from the body; see {@link Directions}. */
  public double outwards() {
    return Directions.outwards(angleRad(), towardsBodyPx);
  }
}
