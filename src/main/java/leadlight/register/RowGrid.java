package leadlight.register;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.RowOutcome;

/**
 * A grid of pixels over the row frame: column i lies at u = {@code fromUMm + i / pxPerMm}, row j at
 * v = {@code fromVMm + j / pxPerMm}; u runs from pin 1 to pin N, v from the body to the open end.
 *
 * @param fromUMm u of the first column, millimetres
 * @param fromVMm v of the first row, millimetres
 * @param pxPerMm pixels a millimetre
 * @param width columns
 * @param height rows
 */
public record RowGrid(double fromUMm, double fromVMm, double pxPerMm, int width, int height) {

  /** Refuses an empty grid and a scale of zero. */
  public RowGrid {
    if (!(pxPerMm > 0) || width < 1 || height < 1) {
      throw new IllegalArgumentException("no grid: " + width + " x " + height + " at " + pxPerMm);
    }
  }

  /** The finest grid for a row: its leads and lands with board around them. */
  static RowGrid around(RowOutcome.Found row, double pitchMm, RegisterTuning tuning) {
    Homography toMm = row.mmToPx().inverse();
    List<PointPx> places =
        row.leads().stream()
            .flatMap(lead -> Stream.of(lead.heelPx(), lead.toePx(), lead.landToePx()))
            .map(at -> toMm.map(at.x(), at.y()))
            .toList();
    DoubleSummaryStatistics u = places.stream().mapToDouble(PointPx::x).summaryStatistics();
    DoubleSummaryStatistics v = places.stream().mapToDouble(PointPx::y).summaryStatistics();
    double ends = tuning.beyondEndsPitch().value() * pitchMm;
    double behind = tuning.behindHeelPitch().value() * pitchMm;
    double ahead = tuning.aheadPitch().value() * pitchMm;
    double scale = Math.min(row.pitchPx(), tuning.finePitchPx().value()) / pitchMm;
    return new RowGrid(
        u.getMin() - ends,
        v.getMin() - behind,
        scale,
        (int) Math.ceil((u.getMax() - u.getMin() + 2 * ends) * scale),
        (int) Math.ceil((v.getMax() - v.getMin() + behind + ahead) * scale));
  }

  /** From grid pixels to millimetres. */
  public Homography toMm() {
    return new Homography(1 / pxPerMm, 0, fromUMm, 0, 1 / pxPerMm, fromVMm, 0, 0, 1);
  }

  /** The column of a place, not rounded. */
  public double column(double uMm) {
    return (uMm - fromUMm) * pxPerMm;
  }

  /** The row of a place, not rounded. */
  public double row(double vMm) {
    return (vMm - fromVMm) * pxPerMm;
  }

  /** The same stretch of board with another number of pixels. */
  public RowGrid scaled(double factor) {
    return new RowGrid(
        fromUMm,
        fromVMm,
        pxPerMm * factor,
        (int) Math.max(1, Math.round(width * factor)),
        (int) Math.max(1, Math.round(height * factor)));
  }
}
