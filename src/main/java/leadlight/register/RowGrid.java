package leadlight.register;

import leadlight.model.Homography;

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
