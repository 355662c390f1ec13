package leadlight.model.row;

import java.util.List;
import leadlight.model.BodySide;
import leadlight.model.Checks;
import leadlight.model.Homography;
import leadlight.model.remark.Note;

/** What looking for a row gave: the row, or the reason why there is none. */
public sealed interface RowOutcome {

  /** The rows that were looked at, best first. */
  List<RowCandidate> considered();

  /**
   * A row.
   *
   * @param mmToPx row frame (u, v in millimetres) to photo pixels
   * @param leads the leads, pin 1 first
   * @param pitchPx mean nominal pitch in pixels
   * @param angleRad direction from pin 1 to pin N, from +x towards +y
   * @param scalePxPerMm pixels per millimetre along the row, from the known pitch
   * @param bodySide where the body lies in the picture
   * @param confidence 0 to 1
   * @param tiltRad tilt of the board against the view axis; 0, since it is not measured yet, and
   *     hence not reported
   * @param considered the rows that were looked at, best first
   */
  record Found(
      Homography mmToPx,
      List<Lead> leads,
      double pitchPx,
      double angleRad,
      double scalePxPerMm,
      BodySide bodySide,
      double confidence,
      double tiltRad,
      List<RowCandidate> considered)
      implements RowOutcome {

    /** Copies the lists. */
    public Found {
      leads = List.copyOf(leads);
      considered = List.copyOf(considered);
      Checks.above("pitchPx", pitchPx, 0);
      Checks.above("scalePxPerMm", scalePxPerMm, 0);
      Checks.within("confidence", confidence, 0, 1);
    }
  }

  /**
   * No row.
   *
   * @param reason why not
   * @param considered the rows that were looked at, best first
   */
  record NotFound(Note reason, List<RowCandidate> considered) implements RowOutcome {

    /** Copies the list. */
    public NotFound {
      considered = List.copyOf(considered);
    }
  }
}
