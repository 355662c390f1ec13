package leadlight.bench;

import java.util.List;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TruthRow;

/**
 * A place where a row is claimed to be: the true row turned about its middle, scaled and moved.
 *
 * @param name for the table
 * @param alongPitch moved along the row, pitches
 * @param bodywardPitch moved towards the body, pitches
 * @param turnDeg turned
 * @param scale of all lengths
 */
record OtherPlace(
    String name, double alongPitch, double bodywardPitch, double turnDeg, double scale) {

  static final OtherPlace TRUE = new OtherPlace("the true place", 0, 0, 0, 1);

  static List<OtherPlace> all() {
    return List.of(
        TRUE,
        new OtherPlace("half a pitch along the row", 0.5, 0, 0, 1),
        new OtherPlace("half a pitch too far out", 0, -0.5, 0, 1),
        new OtherPlace("one and a half pitches too far out", 0, -1.5, 0, 1),
        new OtherPlace("four pitches too far out", 0, -4, 0, 1),
        new OtherPlace("half a pitch too far in", 0, 0.5, 0, 1),
        new OtherPlace("one and a half pitches too far in", 0, 1.5, 0, 1),
        new OtherPlace("two and a half pitches too far in", 0, 2.5, 0, 1),
        new OtherPlace("four pitches too far in", 0, 4, 0, 1),
        new OtherPlace("turned by 5 degrees", 0, 0, 5, 1),
        new OtherPlace("turned by 20 degrees", 0, 0, 20, 1),
        new OtherPlace("upside down", 0, 0, 180, 1),
        new OtherPlace("half as wide", 0, 0, 0, 0.5),
        new OtherPlace("wider by 1.3", 0, 0, 0, 1.3));
  }

  RowOutcome.Found row(PhotoTruth truth) {
    RowOutcome.Found row = TruthRow.of(truth);
    Homography move = move(row, truth.towardsBodyPx());
    PointPx body = truth.towardsBodyPx();
    double turn = Math.toRadians(turnDeg);
    return new RowOutcome.Found(
        move.after(row.mmToPx()),
        row.leads().stream().map(lead -> moved(lead, move)).toList(),
        row.pitchPx() * scale,
        row.angleRad() + turn,
        row.scalePxPerMm() * scale,
        BodySide.towards(
            body.x() * Math.cos(turn) - body.y() * Math.sin(turn),
            body.x() * Math.sin(turn) + body.y() * Math.cos(turn)),
        1,
        0,
        List.of());
  }

  private Homography move(RowOutcome.Found row, PointPx body) {
    double dx = alongPitch * Math.cos(row.angleRad());
    double dy = alongPitch * Math.sin(row.angleRad());
    double length = Math.hypot(body.x(), body.y());
    dx += bodywardPitch * body.x() / length;
    dy += bodywardPitch * body.y() / length;
    double c = scale * Math.cos(Math.toRadians(turnDeg));
    double s = scale * Math.sin(Math.toRadians(turnDeg));
    PointPx middle = row.leads().get(row.leads().size() / 2).landToePx();
    return new Homography(
        c,
        -s,
        middle.x() - c * middle.x() + s * middle.y() + dx * row.pitchPx(),
        s,
        c,
        middle.y() - s * middle.x() - c * middle.y() + dy * row.pitchPx(),
        0,
        0,
        1);
  }

  private static Lead moved(Lead lead, Homography move) {
    return new Lead(
        lead.pin(),
        moved(lead.toePx(), move),
        moved(lead.heelPx(), move),
        moved(lead.landToePx(), move),
        moved(lead.landHeelPx(), move),
        lead.match(),
        lead.uAcrossPx(),
        lead.uAlongPx());
  }

  private static PointPx moved(PointPx point, Homography move) {
    return move.map(point.x(), point.y());
  }
}
