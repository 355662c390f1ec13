package leadlight.leg.find;

import java.util.List;
import leadlight.model.BoardSide;

/**
 * The legs of a part as they lie in the photo, but for scale, turn and place: mirrored from left to
 * right on the solder side; places count from their middle.
 *
 * @param legs the legs, places as seen
 */
record LegPattern(List<LegRequest.Leg> legs) {

  static LegPattern of(LegRequest request) {
    double sign = request.side() == BoardSide.SOLDER ? -1 : 1;
    double mx = request.legs().stream().mapToDouble(LegRequest.Leg::xMm).average().orElse(0);
    double my = request.legs().stream().mapToDouble(LegRequest.Leg::yMm).average().orElse(0);
    return new LegPattern(
        request.legs().stream()
            .map(
                leg ->
                    new LegRequest.Leg(
                        leg.number(),
                        sign * (leg.xMm() - mx),
                        leg.yMm() - my,
                        leg.landWidthMm(),
                        leg.landHeightMm(),
                        leg.holeWidthMm(),
                        leg.holeHeightMm()))
            .toList());
  }

  List<Obround> shapes() {
    return legs.stream().map(LegRequest.Leg::land).distinct().toList();
  }

  /** The longer side of the box around all lands. */
  double extentMm() {
    double left = legs.stream().mapToDouble(it -> it.xMm() - it.landWidthMm() / 2).min().orElse(0);
    double right = legs.stream().mapToDouble(it -> it.xMm() + it.landWidthMm() / 2).max().orElse(0);
    double top = legs.stream().mapToDouble(it -> it.yMm() - it.landHeightMm() / 2).min().orElse(0);
    double low = legs.stream().mapToDouble(it -> it.yMm() + it.landHeightMm() / 2).max().orElse(0);
    return Math.max(right - left, low - top);
  }
}
