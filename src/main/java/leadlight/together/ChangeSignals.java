package leadlight.together;

import leadlight.model.picture.Plane;
import leadlight.register.Overlay;

/**
 * How much a joint changed between two photos, once light and focus were made alike. Two things of
 * each zone: how far its light lies outside what the other photo shows within a pixel (so that a
 * photo laid over half a pixel off changes nothing), in spreads of the row's light; and one less
 * the correlation of its pattern, which a smear of residue or a lamp that moved alters little.
 */
final class ChangeSignals {

  private final Overlay overlay;
  private final SteadyLight light;
  private final double flat;
  private final float[] apart;

  /**
   * Takes the photos.
   *
   * @param flat a flat zone has no pattern to compare: what is added to either side, squared
   *     spreads
   */
  ChangeSignals(Overlay overlay, SteadyLight light, double flat) {
    this.overlay = overlay;
    this.light = light;
    this.flat = flat;
    this.apart = apart(light.after(), light.before());
  }

  /**
   * The signals of one joint: apart ahead of the toe and on the side that changed more, unlike in
   * the same two; NaN where most of a zone, be it one side alone, is not in both pictures or is
   * burnt out in both.
   */
  double[] of(LandZones zones) {
    Zone ahead = zone(zones.ahead());
    Zone left = zone(zones.left());
    Zone right = zone(zones.right());
    return new double[] {
      ahead.apart(),
      Math.max(left.apart(), right.apart()),
      ahead.unlike(),
      Math.max(left.unlike(), right.unlike())
    };
  }

  private Zone zone(LandZones.Box box) {
    Zone zone = new Zone();
    double spread = light.spread();
    int[] pixels = box.pixels(light.after().width(), light.after().height());
    for (int i : pixels) {
      if (overlay.seen(i) && !light.burnt(i)) {
        zone.add(
            light.before().data()[i] / spread, light.after().data()[i] / spread, apart[i] / spread);
      }
    }
    return zone.n > pixels.length / 2.0 ? zone : new Zone();
  }

  /** Sums over a zone. */
  private final class Zone {
    private double n;
    private double a;
    private double b;
    private double aa;
    private double bb;
    private double ab;
    private double off;

    void add(double before, double after, double apart) {
      n++;
      a += before;
      b += after;
      aa += before * before;
      bb += after * after;
      ab += before * after;
      off += apart;
    }

    double unlike() {
      double floor = flat * n;
      double va = Math.max(0, aa - a * a / n) + floor;
      double vb = Math.max(0, bb - b * b / n) + floor;
      return 1 - (ab - a * b / n + floor) / Math.sqrt(va * vb);
    }

    double apart() {
      return off / n;
    }
  }

  /**
   * How far each pixel lies outside the other picture's range around it, the nearer of both ways.
   */
  private static float[] apart(Plane a, Plane b) {
    float[] apart = new float[a.data().length];
    for (int i = 0; i < apart.length; i++) {
      apart[i] = Math.min(outside(a, b, i), outside(b, a, i));
    }
    return apart;
  }

  private static float outside(Plane of, Plane range, int i) {
    int w = range.width();
    float[] data = range.data();
    float low = data[i];
    float high = low;
    int x = i % w;
    for (int k = 0; k < 4; k++) {
      int to = i + (k == 0 ? -1 : k == 1 ? 1 : k == 2 ? -w : w);
      boolean in = k > 1 ? to >= 0 && to < data.length : k == 0 ? x > 0 : x < w - 1;
      low = in ? Math.min(low, data[to]) : low;
      high = in ? Math.max(high, data[to]) : high;
    }
    float light = of.data()[i];
    return Math.max(0, Math.max(light - high, low - light));
  }
}
