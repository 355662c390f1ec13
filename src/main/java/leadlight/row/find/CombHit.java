package leadlight.row.find;

import leadlight.model.PointPx;
import leadlight.row.tuning.RowTuning;

/**
 * A place where a comb of the right number of teeth fits.
 *
 * @param middlePx middle of the comb, photo pixels
 * @param angleRad direction along the row, from +x towards +y
 * @param pitchPx pitch in photo pixels
 * @param score phase lock of the cells less that of the cells beyond the ends, at most 1
 */
public record CombHit(PointPx middlePx, double angleRad, double pitchPx, double score) {

  /** Whether the other hit is the same row, up to a few pitches along it. */
  public boolean sameRow(CombHit other, int leads) {
    double turn = Math.abs(Math.sin(angleRad - other.angleRad));
    double ratio = pitchPx / other.pitchPx;
    double dx = other.middlePx.x() - middlePx.x();
    double dy = other.middlePx.y() - middlePx.y();
    double along = Math.abs(dx * Math.cos(angleRad) + dy * Math.sin(angleRad)) / pitchPx;
    double across = Math.abs(-dx * Math.sin(angleRad) + dy * Math.cos(angleRad)) / pitchPx;
    RowTuning.Same same = RowTuning.builtIn().same();
    return turn < same.turn()
        && ratio > same.pitchFrom()
        && ratio < same.pitchTo()
        && along < same.alongShare() * leads
        && across < same.across();
  }

  /** The comb moved by some pitches along the row. */
  public CombHit movedAlong(int pitches) {
    PointPx moved =
        new PointPx(
            middlePx.x() + pitches * pitchPx * Math.cos(angleRad),
            middlePx.y() + pitches * pitchPx * Math.sin(angleRad));
    return new CombHit(moved, angleRad, pitchPx, score);
  }
}
