package leadlight.rowcheck;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;

/**
 * A row claimed beside where it is: moved along or across its leads, or turned about its middle.
 * The second reader learns from such rows what is none.
 */
public final class StrayRow {

  /** Beyond half a pitch verdicts begin to fail; two and a half is a land's length and more. */
  private static final double[] ALONG = {0.65, 0.8, 1.0, 1.25, 1.5, 1.75, 2.0, 2.5};

  /** Degrees; at ten the ends of a row of 19 lie one and a half pitches off. */
  private static final double[] TURNED = {9, 13, 20};

  private static final double HALF = 0.5;

  /**
   * How a row strays.
   *
   * @param du pitches towards the last pin
   * @param dv pitches away from the body
   * @param turnDeg turn about its middle, degrees
   */
  private record Way(double du, double dv, double turnDeg) {}

  private static final List<Way> WAYS = ways();

  private StrayRow() {}

  private static List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    for (int sign : new int[] {-1, 1}) {
      for (double along : ALONG) {
        ways.add(new Way(0, sign * along, 0));
      }
      for (double turn : TURNED) {
        ways.add(new Way(0, 0, sign * turn));
      }
      ways.add(new Way(sign * HALF, 0, 0));
      ways.add(new Way(HALF, sign, 0));
    }
    return List.copyOf(ways);
  }

  /**
   * The row at a wrong place.
   *
   * @param number which of the ways, any number from 0; they come again in turn
   */
  public static RowOutcome.Found of(RowOutcome.Found row, int number) {
    Way way = WAYS.get(number % WAYS.size());
    RowOutcome.Found moved = MovedRow.by(row, way.du(), way.dv(), 0);
    return way.turnDeg() == 0 ? moved : turned(moved, Math.toRadians(way.turnDeg()));
  }

  private static RowOutcome.Found turned(RowOutcome.Found row, double angleRad) {
    PointPx a = row.leads().get(0).landToePx();
    PointPx b = row.leads().get(row.leads().size() - 1).landToePx();
    double cos = Math.cos(angleRad);
    double sin = Math.sin(angleRad);
    double x = (a.x() + b.x()) / 2;
    double y = (a.y() + b.y()) / 2;
    Homography turn =
        new Homography(cos, -sin, x - cos * x + sin * y, sin, cos, y - sin * x - cos * y, 0, 0, 1);
    List<Lead> leads = row.leads().stream().map(lead -> turned(lead, turn)).toList();
    return MovedRow.with(row, turn.after(row.mmToPx()), leads);
  }

  private static Lead turned(Lead lead, Homography turn) {
    return new Lead(
        lead.pin(),
        turned(lead.toePx(), turn),
        turned(lead.heelPx(), turn),
        turned(lead.landToePx(), turn),
        turned(lead.landHeelPx(), turn),
        lead.match(),
        lead.uAcrossPx(),
        lead.uAlongPx());
  }

  private static PointPx turned(PointPx p, Homography turn) {
    return turn.map(p.x(), p.y());
  }
}
