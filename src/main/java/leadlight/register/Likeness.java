package leadlight.register;

import leadlight.model.picture.Plane;

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

  /**
   * What is a place's own: the picture less the mean of what lies one pitch before and behind it. A
   * row repeats at its pitch, so rows of one kind look alike; what is left tells one from another.
   */
  static Plane own(Plane light, double pitchPx) {
    int w = light.width();
    float[] out = new float[light.data().length];
    int whole = (int) Math.floor(pitchPx);
    float part = (float) (pitchPx - whole);
    for (int y = 0; y < light.height(); y++) {
      for (int x = whole + 1; x < w - whole - 1; x++) {
        int i = y * w + x;
        float before = (1 - part) * light.data()[i - whole] + part * light.data()[i - whole - 1];
        float behind = (1 - part) * light.data()[i + whole] + part * light.data()[i + whole + 1];
        out[i] = light.data()[i] - (before + behind) / 2;
      }
    }
    return new Plane(w, light.height(), out);
  }
}
