package leadlight.together;

import leadlight.model.Homography;
import leadlight.model.Lead;
import leadlight.model.Plane;
import leadlight.model.PointPx;
import leadlight.register.Overlay;
import leadlight.register.RowGrid;

/**
 * How much a joint changed between two photos, zone by zone: one less the correlation of its evened
 * light, after a small blur that takes the difference of focus away. The shoulder of the lead and
 * the board ahead of the land cannot have changed; they say how alike the photos are there.
 */
final class ChangeSignals {

  /** Zones: ahead of the toe, beside the foot, the whole land; then what cannot have changed. */
  static final int COUNT = 6;

  private static final double HALF_LAND = 0.3;
  private static final double HALF_LEAD = 0.2;

  private final Overlay overlay;
  private final Plane before;
  private final Plane after;
  private final double pitchPx;
  private final Homography photoToMm;

  /**
   * Takes two photos, evened.
   *
   * @param photoToMm of the photo that stays
   */
  ChangeSignals(Overlay overlay, Plane before, Plane after, double pitchMm, Homography photoToMm) {
    this.overlay = overlay;
    this.before = blurred(before);
    this.after = blurred(after);
    this.pitchPx = pitchMm * overlay.fixed().grid().pxPerMm();
    this.photoToMm = photoToMm;
  }

  /** The signals of one joint; NaN where a zone is not in both pictures. */
  double[] of(Lead lead) {
    RowGrid grid = overlay.fixed().grid();
    PointPx toe = photoToMm.map(lead.toePx().x(), lead.toePx().y());
    PointPx heel = photoToMm.map(lead.heelPx().x(), lead.heelPx().y());
    PointPx land = photoToMm.map(lead.landToePx().x(), lead.landToePx().y());
    double x = grid.column(toe.x());
    double toeY = grid.row(toe.y());
    double heelY = grid.row(heel.y());
    double landY = grid.row(land.y());
    double w = HALF_LAND * pitchPx;
    double in = HALF_LEAD * pitchPx;
    Zone ahead = zone(x - w, x + w, toeY - 0.1 * pitchPx, landY);
    Zone left = zone(x - w, x - in * 0.8, heelY, toeY);
    Zone right = zone(x + in * 0.8, x + w, heelY, toeY);
    Zone whole = zone(x - w, x + w, heelY, landY);
    Zone shoulder = zone(x - in, x + in, heelY - 0.3 * pitchPx, heelY + 0.3 * (toeY - heelY));
    return new double[] {
      ahead.unlike(),
      (left.unlike() + right.unlike()) / 2,
      whole.unlike(),
      shoulder.unlike(),
      ahead.difference(),
      whole.difference()
    };
  }

  private Zone zone(double x0, double x1, double y0, double y1) {
    Zone zone = new Zone();
    int w = before.width();
    for (int y = (int) Math.max(0, Math.ceil(y0)); y <= Math.min(before.height() - 1, y1); y++) {
      for (int x = (int) Math.max(0, Math.ceil(x0)); x <= Math.min(w - 1, x1); x++) {
        int i = y * w + x;
        if (overlay.seen(i)) {
          zone.add(before.data()[i], after.data()[i]);
        }
      }
    }
    return zone;
  }

  /** Sums over a zone. */
  private static final class Zone {
    private double n;
    private double a;
    private double b;
    private double aa;
    private double bb;
    private double ab;
    private double apart;

    void add(double before, double after) {
      n++;
      a += before;
      b += after;
      aa += before * before;
      bb += after * after;
      ab += before * after;
      apart += Math.abs(before - after);
    }

    double unlike() {
      double va = aa - a * a / n;
      double vb = bb - b * b / n;
      // A flat zone has no pattern to compare: a little is added to either side.
      double floor = 0.02 * n;
      return 1 - (ab - a * b / n + floor) / Math.sqrt((va + floor) * (vb + floor));
    }

    double difference() {
      return apart / n;
    }
  }

  /** A box of three by three, twice. */
  private static Plane blurred(Plane light) {
    return once(once(light));
  }

  private static Plane once(Plane light) {
    int w = light.width();
    int h = light.height();
    float[] out = light.data().clone();
    for (int y = 1; y < h - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        float sum = 0;
        for (int dy = -1; dy <= 1; dy++) {
          for (int dx = -1; dx <= 1; dx++) {
            sum += light.data()[(y + dy) * w + x + dx];
          }
        }
        out[y * w + x] = sum / 9;
      }
    }
    return new Plane(w, h, out);
  }
}
