package leadlight.rowcheck;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;

/** A found row moved in its own frame. */
final class MovedRow {

  private MovedRow() {}

  /**
   * The row moved as a whole.
   *
   * @param du pitches towards the last pin
   * @param dv pitches away from the body
   * @param leavesOpen standard uncertainty of the move, pitches
   */
  static RowOutcome.Found by(RowOutcome.Found row, double du, double dv, double leavesOpen) {
    int last = row.leads().size() - 1;
    PointPx a = row.leads().get(0).landToePx();
    PointPx b = row.leads().get(last).landToePx();
    double ux = (b.x() - a.x()) / a.distanceTo(b) * row.pitchPx();
    double uy = (b.y() - a.y()) / a.distanceTo(b) * row.pitchPx();
    Lead middle = row.leads().get(last / 2);
    double length = middle.landHeelPx().distanceTo(middle.landToePx());
    double vx = (middle.landToePx().x() - middle.landHeelPx().x()) / length * row.pitchPx();
    double vy = (middle.landToePx().y() - middle.landHeelPx().y()) / length * row.pitchPx();
    return shifted(row, du * ux + dv * vx, du * uy + dv * vy, leavesOpen * row.pitchPx());
  }

  private static RowOutcome.Found shifted(RowOutcome.Found row, double dx, double dy, double open) {
    List<Lead> leads = new ArrayList<>();
    for (Lead lead : row.leads()) {
      leads.add(
          new Lead(
              lead.pin(),
              moved(lead.toePx(), dx, dy),
              moved(lead.heelPx(), dx, dy),
              moved(lead.landToePx(), dx, dy),
              moved(lead.landHeelPx(), dx, dy),
              lead.match(),
              Math.hypot(lead.uAcrossPx(), open),
              Math.hypot(lead.uAlongPx(), open)));
    }
    Homography shift = new Homography(1, 0, dx, 0, 1, dy, 0, 0, 1);
    return with(row, shift.after(row.mmToPx()), leads);
  }

  /**
   * The row counted from another lead: each pin where another was, the end ones beyond.
   *
   * @param pins more than 0 towards the last pin, less towards the first
   */
  static RowOutcome.Found byPins(RowOutcome.Found row, int pins) {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < row.leads().size(); i++) {
      leads.add(renumbered(i + 1, place(row, i + pins)));
    }
    double pitchMm = row.pitchPx() / row.scalePxPerMm();
    Homography shift = new Homography(1, 0, pins * pitchMm, 0, 1, 0, 0, 0, 1);
    return with(row, row.mmToPx().after(shift), leads);
  }

  /** The lead at a place counted from 0, or the place beyond an end as if a lead were there. */
  static Lead place(RowOutcome.Found row, int at) {
    int last = row.leads().size() - 1;
    return at < 0 || at > last ? beyond(row, at < 0 ? at : at - last) : row.leads().get(at);
  }

  /** The place some pitches beyond an end, as if a lead were there. */
  private static Lead beyond(RowOutcome.Found row, int pins) {
    int last = row.leads().size() - 1;
    Lead end = row.leads().get(pins > 0 ? last : 0);
    Lead inner = row.leads().get(pins > 0 ? last - 1 : 1);
    int pitches = Math.abs(pins);
    double dx = (end.landToePx().x() - inner.landToePx().x()) * pitches;
    double dy = (end.landToePx().y() - inner.landToePx().y()) * pitches;
    return new Lead(
        end.pin(),
        moved(end.toePx(), dx, dy),
        moved(end.heelPx(), dx, dy),
        moved(end.landToePx(), dx, dy),
        moved(end.landHeelPx(), dx, dy),
        end.match(),
        end.uAcrossPx(),
        end.uAlongPx());
  }

  /** The lead under another number. */
  static Lead renumbered(int pin, Lead lead) {
    return new Lead(
        pin,
        lead.toePx(),
        lead.heelPx(),
        lead.landToePx(),
        lead.landHeelPx(),
        lead.match(),
        lead.uAcrossPx(),
        lead.uAlongPx());
  }

  /** The row with other leads. */
  static RowOutcome.Found with(RowOutcome.Found row, Homography mmToPx, List<Lead> leads) {
    return new RowOutcome.Found(
        mmToPx,
        leads,
        row.pitchPx(),
        row.angleRad(),
        row.scalePxPerMm(),
        row.bodySide(),
        row.confidence(),
        row.tiltRad(),
        row.considered());
  }

  private static PointPx moved(PointPx p, double dx, double dy) {
    return new PointPx(p.x() + dx, p.y() + dy);
  }
}
