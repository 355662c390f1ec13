package leadlight.row;

import leadlight.model.Homography;

/**
 * Which N of N + k places are the row: the ones whose inside looks like leads and whose outside
 * does not.
 *
 * @param shift how many pitches the row lies further right than assumed
 * @param score mean likeness inside less mean likeness just outside
 * @param margin how much better than the next choice, summed likeness
 * @param inside mean likeness inside
 * @param outside the larger mean likeness of the two places beyond either end
 */
record EndChoice(int shift, double score, double margin, double inside, double outside) {

  static final int REACH = 6;

  static EndChoice of(Strip strip, LeadPicture picture, Lattice lattice) {
    int n = lattice.count();
    int reach = REACH - 2;
    double[] sums = new double[2 * reach + 1];
    double[][] parts = new double[2 * reach + 1][];
    double[] even = new double[n + 2 * REACH];
    for (int k = -REACH; k < n + REACH; k++) {
      even[k + REACH] = picture.likeness(strip, lattice.at(k));
    }
    int best = 0;
    for (int shift = -reach; shift <= reach; shift++) {
      double inside = 0;
      for (int k = 0; k < n; k++) {
        inside += even[k + shift + REACH];
      }
      double left = Math.max(even[shift - 1 + REACH], 0) + Math.max(even[shift - 2 + REACH], 0);
      double right =
          Math.max(even[n + shift + REACH], 0) + Math.max(even[n + shift + 1 + REACH], 0);
      sums[shift + reach] = inside - 0.5 * (left + right);
      parts[shift + reach] = new double[] {inside / n, Math.max(left, right) / 2};
      if (sums[shift + reach] > sums[best]) {
        best = shift + reach;
      }
    }
    double next = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < sums.length; i++) {
      if (i != best) {
        next = Math.max(next, sums[i]);
      }
    }
    return new EndChoice(
        best - reach, sums[best] / n, sums[best] - next, parts[best][0], parts[best][1]);
  }

  /** The map moved to the chosen place. */
  Homography moved(Homography uvToPhoto) {
    return uvToPhoto.after(new Homography(1, 0, shift, 0, 1, 0, 0, 0, 1));
  }
}
