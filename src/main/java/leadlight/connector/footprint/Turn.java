package leadlight.connector.footprint;

import leadlight.connector.ConnectorRow.OpenEnd;
import leadlight.connector.Mm;

/** Quarter turns that bring an open end to point down; x right, y down. Never a mirror image. */
record Turn(OpenEnd from) {

  double x(double x, double y) {
    return Mm.tidy(
        switch (from) {
          case DOWN -> x;
          case LEFT -> y;
          case UP -> -x;
          case RIGHT -> -y;
        });
  }

  double y(double x, double y) {
    return Mm.tidy(
        switch (from) {
          case DOWN -> y;
          case LEFT -> -x;
          case UP -> -y;
          case RIGHT -> x;
        });
  }

  /** Where an open end points after the turn. */
  OpenEnd of(OpenEnd end) {
    OpenEnd[] clockwise = OpenEnd.values();
    return clockwise[Math.floorMod(end.ordinal() - from.ordinal(), clockwise.length)];
  }

  /** True if widths and heights change places. */
  boolean swaps() {
    return from == OpenEnd.LEFT || from == OpenEnd.RIGHT;
  }
}
