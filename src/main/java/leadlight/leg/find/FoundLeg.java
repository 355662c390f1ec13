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
  private static final double HALF = 0.5;

  /** The land's outline in the photo. */
  public List<PointPx> outline() {
    return IntStream.range(0, OUTLINE_POINTS).mapToObj(this::outlineAt).toList();
  }

  /**
   * Whether all of the land lies in a picture of a size; a pixel reaches half a one beyond its
   * middle.
   */
  public boolean inside(int widthPx, int heightPx) {
    return outline().stream()
        .allMatch(
            at ->
                at.x() >= -HALF
                    && at.y() >= -HALF
                    && at.x() < widthPx - HALF
                    && at.y() < heightPx - HALF);
  }

  private PointPx outlineAt(int point) {
    double dx = Math.cos(2 * Math.PI * point / OUTLINE_POINTS);
    double dy = Math.sin(2 * Math.PI * point / OUTLINE_POINTS);
    double reach = leg.land().reachMm(dx, dy);
    return place.at(dx * reach, dy * reach);
  }
}
