package leadlight.register;

import leadlight.model.Plane;

/** How alike two pictures over one grid are. */
final class Likeness {

  private Likeness() {}

  /** Correlation over the pixels that count, -1 to 1; 0 if one of them is flat. */
  static double of(Plane a, Plane b, boolean[] use) {
    double n = 0;
    double sa = 0;
    double sb = 0;
    double saa = 0;
    double sbb = 0;
    double sab = 0;
    for (int i = 0; i < use.length; i++) {
      if (use[i]) {
        double x = a.data()[i];
        double y = b.data()[i];
        n++;
        sa += x;
        sb += y;
        saa += x * x;
        sbb += y * y;
        sab += x * y;
      }
    }
    double va = saa - sa * sa / Math.max(1, n);
    double vb = sbb - sb * sb / Math.max(1, n);
    return va <= 0 || vb <= 0 ? 0 : (sab - sa * sb / n) / Math.sqrt(va * vb);
  }
}
