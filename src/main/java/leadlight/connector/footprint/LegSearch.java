package leadlight.connector.footprint;

import java.util.List;
import java.util.Optional;
import leadlight.connector.Leg;
import leadlight.connector.Mm;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.Pad;

/**
 * Tells anchor legs from what else a footprint has beside its rows: plated holes wide enough for a
 * leg, and lands that are much larger than a row's and not between the rows.
 */
final class LegSearch {

  /** Narrower holes are vias or round signal pins; the narrowest leg slot in figures is 0.5 mm. */
  private static final double LEAST_HOLE_MM = 0.45;

  /** A tab's copper against a row land's. */
  private static final double LEAST_AREA = 2;

  private static final double SLOT_MM = 0.02;

  private final Turn turn;

  LegSearch(Turn turn) {
    this.turn = turn;
  }

  static boolean isLeg(Pad pad, List<LandRun> rows) {
    if (pad.kind() == Kind.PLATED_HOLE) {
      return pad.drill()
          .filter(d -> Math.min(d.widthMm(), d.heightMm()) >= LEAST_HOLE_MM)
          .isPresent();
    }
    Pad land = rows.get(0).lands().get(0);
    return area(pad) >= LEAST_AREA * area(land) && !between(pad, rows);
  }

  private static double area(Pad pad) {
    return pad.widthMm() * pad.heightMm();
  }

  /** True if rows stand on two opposite sides of it, as around an exposed pad. */
  private static boolean between(Pad pad, List<LandRun> rows) {
    return between(pad, rows, true) || between(pad, rows, false);
  }

  private static boolean between(Pad pad, List<LandRun> rows, boolean alongX) {
    boolean before = false;
    boolean behind = false;
    for (LandRun row : rows) {
      double side = LandRun.across(row.lands().get(0), alongX) - LandRun.across(pad, alongX);
      double from = LandRun.along(row.lands().get(0), alongX);
      double to = LandRun.along(row.lands().get(row.lands().size() - 1), alongX);
      double at = LandRun.along(pad, alongX);
      if (row.alongX() == alongX && at >= from && at <= to) {
        before |= side < 0;
        behind |= side > 0;
      }
    }
    return before && behind;
  }

  Leg leg(Pad pad, double originX, double originY) {
    Optional<Leg.Size> opening = pad.drill().map(this::size);
    boolean round = opening.filter(o -> Math.abs(o.widthMm() - o.heightMm()) < SLOT_MM).isPresent();
    Leg.Kind hole = round ? Leg.Kind.HOLE : Leg.Kind.SLOT;
    return new Leg(
        pad.names().isEmpty() ? "leg" : pad.name(),
        opening.isPresent() ? hole : Leg.Kind.TAB,
        Leg.Origin.MIDDLE,
        Mm.tidy(turn.x(pad.xMm(), pad.yMm()) - originX),
        Mm.tidy(turn.y(pad.xMm(), pad.yMm()) - originY),
        size(new Box(0, 0, pad.widthMm(), pad.heightMm())),
        opening);
  }

  private Leg.Size size(Box box) {
    double w = Mm.tidy(box.widthMm());
    double h = Mm.tidy(box.heightMm());
    return turn.swaps() ? new Leg.Size(h, w) : new Leg.Size(w, h);
  }
}
