package leadlight.connector.footprint;

import java.util.Comparator;
import java.util.List;
import leadlight.connector.ConnectorRow.OpenEnd;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.Footprint.Pad;

/**
 * Lands in a line on a footprint.
 *
 * @param lands in ascending x or y
 * @param alongX true if the line runs along x
 */
record LandRun(List<Pad> lands, boolean alongX) {

  static final Comparator<LandRun> LONGEST_FIRST =
      Comparator.comparingInt((LandRun run) -> -run.lands().size())
          .thenComparing(run -> run.alongX() ? 0 : 1)
          .thenComparingDouble(run -> run.lands().get(0).yMm())
          .thenComparingDouble(run -> run.lands().get(0).xMm());

  LandRun {
    lands = List.copyOf(lands);
  }

  static double along(Pad pad, boolean alongX) {
    return alongX ? pad.xMm() : pad.yMm();
  }

  static double across(Pad pad, boolean alongX) {
    return alongX ? pad.yMm() : pad.xMm();
  }

  static double width(Pad pad, boolean alongX) {
    return alongX ? pad.widthMm() : pad.heightMm();
  }

  static double length(Pad pad, boolean alongX) {
    return alongX ? pad.heightMm() : pad.widthMm();
  }

  /** Where the open ends point if the body's middle lies on the other side. */
  OpenEnd awayFrom(Box body) {
    if (alongX) {
      return lands.get(0).yMm() >= body.middleY() ? OpenEnd.DOWN : OpenEnd.UP;
    }
    return lands.get(0).xMm() >= body.middleX() ? OpenEnd.RIGHT : OpenEnd.LEFT;
  }

  /**
   * Distance of the line from the body's middle over half the body's depth; 0 if it runs through.
   */
  double offCentre(Box body) {
    double half = (alongX ? body.heightMm() : body.widthMm()) / 2;
    double off = across(lands.get(0), alongX) - (alongX ? body.middleY() : body.middleX());
    return half > 0 ? Math.abs(off) / half : 0;
  }

  /** True if another row stands before this one's open ends: the body then covers this one. */
  boolean behind(LandRun other, Box body) {
    if (other == this || other.alongX != alongX || other.awayFrom(body) != awayFrom(body)) {
      return false;
    }
    boolean positive = awayFrom(body) == OpenEnd.DOWN || awayFrom(body) == OpenEnd.RIGHT;
    double ahead = across(other.lands.get(0), alongX) - across(lands.get(0), alongX);
    return (positive ? ahead > 0 : ahead < 0) && from() < other.to() && other.from() < to();
  }

  private double from() {
    return along(lands.get(0), alongX);
  }

  private double to() {
    return along(lands.get(lands.size() - 1), alongX);
  }
}
