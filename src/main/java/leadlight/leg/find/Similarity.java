package leadlight.leg.find;

import java.util.List;
import leadlight.model.PointPx;

/**
 * Scale, turn and shift from a part to the photo that bring the legs nearest to where they were
 * found, by least squares (Umeyama 1991, IEEE Transactions on Pattern Analysis 13(4), without
 * mirroring).
 */
final class Similarity {

  private final double cos;
  private final double sin;
  private final double x0;
  private final double y0;
  private final double pxPerMmX;
  private final double pxPerMmY;

  private Similarity(
      double cos, double sin, double x0, double y0, double pxPerMmX, double pxPerMmY) {
    this.cos = cos;
    this.sin = sin;
    this.x0 = x0;
    this.y0 = y0;
    this.pxPerMmX = pxPerMmX;
    this.pxPerMmY = pxPerMmY;
  }

  /**
   * The map of some legs.
   *
   * @param legs legs that were found; a single one gives its place alone, with turn and scale of
   *     the pattern
   * @param pattern all legs as the pattern was laid
   */
  static Similarity of(List<FoundLeg> legs, List<FoundLeg> pattern) {
    double angle = pattern.get(0).place().angleRad();
    double scale = pattern.get(0).place().pxPerMm();
    double mx = legs.stream().mapToDouble(it -> it.leg().xMm()).average().orElseThrow();
    double my = legs.stream().mapToDouble(it -> it.leg().yMm()).average().orElseThrow();
    double px = legs.stream().mapToDouble(it -> it.place().centre().x()).average().orElseThrow();
    double py = legs.stream().mapToDouble(it -> it.place().centre().y()).average().orElseThrow();
    double along = 0;
    double across = 0;
    double spread = 0;
    for (FoundLeg leg : legs) {
      double x = leg.leg().xMm() - mx;
      double y = leg.leg().yMm() - my;
      double u = leg.place().centre().x() - px;
      double v = leg.place().centre().y() - py;
      along += x * u + y * v;
      across += x * v - y * u;
      spread += x * x + y * y;
    }
    double cos = spread == 0 ? scale * Math.cos(angle) : along / spread;
    double sin = spread == 0 ? scale * Math.sin(angle) : across / spread;
    return new Similarity(
        cos,
        sin,
        px - (cos * mx - sin * my),
        py - (sin * mx + cos * my),
        legs.stream().mapToDouble(it -> it.place().pxPerMmX()).average().orElseThrow(),
        legs.stream().mapToDouble(it -> it.place().pxPerMmY()).average().orElseThrow());
  }

  LandPlace place(LegRequest.Leg leg) {
    return new LandPlace(
        new PointPx(x0 + cos * leg.xMm() - sin * leg.yMm(), y0 + sin * leg.xMm() + cos * leg.yMm()),
        Math.atan2(sin, cos),
        pxPerMmX,
        pxPerMmY);
  }
}
