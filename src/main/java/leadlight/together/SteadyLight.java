package leadlight.together;

import java.util.Arrays;
import java.util.List;
import leadlight.model.picture.Plane;
import leadlight.register.Focus;
import leadlight.register.Normal;
import leadlight.register.Overlay;
import leadlight.register.RegisterTuning;
import leadlight.register.Robust;

/**
 * Two overlaid photos made alike by what cannot have changed: mask, print and the tops of the
 * leads. The light of the one is the other's times a gain that varies over the row as a polynomial
 * of second order, plus a level of first order, fitted robustly (Tukey's biweight); the sharper is
 * softened. What then differs there is what light alone does in this pair.
 */
final class SteadyLight {

  private static final int UNKNOWNS = 9;

  /** Where two photos agree to the last bit a fit must still weigh: far below a grey level. */
  private static final double LEAST_SPREAD = 2e-3;

  private final ChangeTuning.Light tuning;
  private final Overlay overlay;
  private final Plane after;
  private final Plane before;
  private final double noise;
  private final double spread;

  /** Takes the photo after soldering as the fixed one. */
  SteadyLight(Overlay overlay, List<LandZones> zones, ChangeTuning.Light tuning) {
    this.overlay = overlay;
    this.tuning = tuning;
    Plane fixed = overlay.fixed().light();
    boolean[] joint = joints(zones, fixed);
    boolean[] steady = new boolean[joint.length];
    for (int i = 0; i < joint.length; i++) {
      steady[i] = !joint[i] && overlay.seen(i);
    }
    for (LandZones zone : zones) {
      for (int i : zone.top().pixels(fixed.width(), fixed.height())) {
        steady[i] = overlay.seen(i);
      }
    }
    Plane lit = lit(overlay.moving().light(), fixed, steady);
    Focus.Pair alike = Focus.alike(fixed, lit, i -> steady[i], RegisterTuning.builtIn());
    this.after = Focus.softer(Focus.softer(alike.a()));
    this.before = Focus.softer(Focus.softer(alike.b()));
    this.noise = noise(steady);
    this.spread = spread(joint);
  }

  /** The photo after soldering. */
  Plane after() {
    return after;
  }

  /** The photo before, in the other's light. */
  Plane before() {
    return before;
  }

  /**
   * How far apart light alone leaves the two, grey levels, robust; without end where too little
   * shows to tell.
   */
  double noise() {
    return noise;
  }

  /** Spread of the light of all joints after soldering, grey levels. */
  double spread() {
    return spread;
  }

  /** White in both photos: whatever happened there, it does not show. */
  boolean burnt(int i) {
    return overlay.fixed().light().data()[i] >= tuning.burntFrom().value()
        && overlay.moving().light().data()[i] >= tuning.burntFrom().value();
  }

  private static boolean[] joints(List<LandZones> zones, Plane of) {
    boolean[] joint = new boolean[of.data().length];
    for (LandZones zone : zones) {
      for (int i : zone.joint().pixels(of.width(), of.height())) {
        joint[i] = true;
      }
    }
    return joint;
  }

  private Plane lit(Plane moving, Plane fixed, boolean[] steady) {
    int[] used = used(moving, fixed, steady);
    double[] c = {1, 0, 0, 0, 0, 0, 0, 0, 0};
    double spread = Double.MAX_VALUE;
    double[] row = new double[UNKNOWNS];
    for (int round = 0; round < tuning.rounds().value() && used.length > UNKNOWNS; round++) {
      Normal normal = believed(used.length);
      for (int i : used) {
        fill(row, moving, i);
        double weight = Robust.weight(fixed.data()[i] - dot(row, c), spread);
        if (weight > 0) {
          normal.add(row, fixed.data()[i], weight);
        }
      }
      c = normal.solution();
      spread = Robust.spread(median(moving, fixed, used, c)) + LEAST_SPREAD;
    }
    float[] lit = new float[moving.data().length];
    for (int i = 0; i < lit.length; i++) {
      fill(row, moving, i);
      lit[i] = (float) dot(row, c);
    }
    return new Plane(moving.width(), moving.height(), lit);
  }

  private int[] used(Plane moving, Plane fixed, boolean[] steady) {
    double burnt = tuning.burntFrom().value();
    int[] all = new int[steady.length];
    int n = 0;
    for (int i = 0; i < steady.length; i++) {
      if (steady[i] && moving.data()[i] < burnt && fixed.data()[i] < burnt) {
        all[n++] = i;
      }
    }
    int every = Math.max(1, n / (int) tuning.enoughPx().value());
    int[] used = new int[n / every];
    for (int k = 0; k < used.length; k++) {
      used[k] = all[k * every];
    }
    return used;
  }

  private Normal believed(int pixels) {
    Normal normal = new Normal(UNKNOWNS);
    for (int k = 0; k < UNKNOWNS; k++) {
      double[] one = new double[UNKNOWNS];
      one[k] = 1;
      normal.add(one, k == 0 ? 1 : 0, tuning.belief().value() * pixels);
    }
    return normal;
  }

  private static void fill(double[] row, Plane moving, int i) {
    double half = moving.width() / 2.0;
    double x = (i % moving.width() - half) / half;
    double y = (i / moving.width() - moving.height() / 2.0) / half;
    double light = moving.data()[i];
    row[0] = light;
    row[1] = light * x;
    row[2] = light * y;
    row[3] = light * x * x;
    row[4] = light * x * y;
    row[5] = light * y * y;
    row[6] = 1;
    row[7] = x;
    row[8] = y;
  }

  private static double dot(double[] row, double[] c) {
    double sum = 0;
    for (int k = 0; k < c.length; k++) {
      sum += row[k] * c[k];
    }
    return sum;
  }

  private static double median(Plane moving, Plane fixed, int[] used, double[] c) {
    double[] sizes = new double[used.length];
    double[] row = new double[UNKNOWNS];
    for (int k = 0; k < sizes.length; k++) {
      fill(row, moving, used[k]);
      sizes[k] = Math.abs(fixed.data()[used[k]] - dot(row, c));
    }
    Arrays.sort(sizes);
    return sizes[sizes.length / 2];
  }

  private double noise(boolean[] steady) {
    double[] sizes = new double[steady.length];
    int n = 0;
    for (int i = 0; i < steady.length; i++) {
      if (steady[i] && !burnt(i)) {
        sizes[n++] = Math.abs(after.data()[i] - before.data()[i]);
      }
    }
    Arrays.sort(sizes, 0, n);
    return n <= UNKNOWNS
        ? Double.POSITIVE_INFINITY
        : Robust.spread(sizes[n / 2]) + tuning.rounding().value();
  }

  private double spread(boolean[] joint) {
    double n = 0;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < joint.length; i++) {
      if (joint[i] && overlay.seen(i)) {
        double light = after.data()[i];
        n++;
        sum += light;
        squares += light * light;
      }
    }
    return n == 0 ? 1 : Math.max(1, Math.sqrt(Math.max(0, squares / n - sum * sum / n / n)));
  }
}
