package leadlight.row;

import leadlight.model.RowSpec;

/** Where the lands of a row stand, in pitches from the left one, as seen in the strip. */
record Lattice(double[] u) {

  /**
   * @param mirrored whether the strip runs from the last pin to the first
   */
  static Lattice of(RowSpec spec, boolean mirrored) {
    int n = spec.leads();
    double[] u = new double[n];
    for (int i = 0; i < n; i++) {
      u[i] =
          mirrored
              ? (spec.spanMm() - spec.lands().get(n - 1 - i).uMm()) / spec.pitchMm()
              : spec.lands().get(i).uMm() / spec.pitchMm();
    }
    return new Lattice(u);
  }

  int count() {
    return u.length;
  }

  double span() {
    return u[u.length - 1];
  }

  /** Place k, beyond the ends one pitch a step. */
  double at(int k) {
    if (k < 0) {
      return k;
    }
    return k < u.length ? u[k] : span() + (k - u.length + 1);
  }
}
