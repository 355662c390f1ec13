package leadlight.leg.find;

import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.PointPx;

/**
 * A leg's land that was found.
 *
 * @param leg which, or one of those that it may be
 * @param number 1 to n, 0 if it cannot be told
 * @param place where
 * @param match share of its outline that is an edge, 0 to 1
 */
public record FoundLeg(LegRequest.Leg leg, int number, LandPlace place, double match) {

  private static final int OUTLINE_POINTS = 36;

  /** The land's outline in the photo. */
  public List<PointPx> outline() {
    return IntStream.range(0, OUTLINE_POINTS).mapToObj(this::outlineAt).toList();
  }

  private PointPx outlineAt(int point) {
    double dx = Math.cos(2 * Math.PI * point / OUTLINE_POINTS);
    double dy = Math.sin(2 * Math.PI * point / OUTLINE_POINTS);
    double reach = leg.land().reachMm(dx, dy);
    return place.at(dx * reach, dy * reach);
  }
}
