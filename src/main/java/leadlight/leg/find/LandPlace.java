package leadlight.leg.find;

import leadlight.model.PointPx;

/**
 * Where a land lies in the photo.
 *
 * @param centre its middle
 * @param angleRad from the picture's x axis to the land's, clockwise
 * @param pxPerMmX scale along the land's x axis
 * @param pxPerMmY scale along its y axis: another one where the board is seen at a slant
 */
public record LandPlace(PointPx centre, double angleRad, double pxPerMmX, double pxPerMmY) {

  /** A place in the land's own frame, millimetres from its middle, in the photo. */
  public PointPx at(double xMm, double yMm) {
    double x = xMm * pxPerMmX;
    double y = yMm * pxPerMmY;
    double cos = Math.cos(angleRad);
    double sin = Math.sin(angleRad);
    return new PointPx(centre.x() + cos * x - sin * y, centre.y() + sin * x + cos * y);
  }

  /** Mean scale, pixels a millimetre. */
  public double pxPerMm() {
    return Math.sqrt(pxPerMmX * pxPerMmY);
  }

  public LandPlace moved(double dxPx, double dyPx) {
    return new LandPlace(
        new PointPx(centre.x() + dxPx, centre.y() + dyPx), angleRad, pxPerMmX, pxPerMmY);
  }

  LandPlace turned(double byRad) {
    return new LandPlace(centre, angleRad + byRad, pxPerMmX, pxPerMmY);
  }

  public LandPlace stretched(double x, double y) {
    return new LandPlace(centre, angleRad, pxPerMmX * x, pxPerMmY * y);
  }

  /** The same in a picture of {@code factor} times the size. */
  public LandPlace scaled(double factor) {
    return new LandPlace(
        new PointPx((centre.x() + 0.5) * factor - 0.5, (centre.y() + 0.5) * factor - 0.5),
        angleRad,
        pxPerMmX * factor,
        pxPerMmY * factor);
  }
}
