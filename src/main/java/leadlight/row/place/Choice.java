package leadlight.row.place;

import leadlight.numeric.Parabola;

/**
 * The best of a range of rows by scores that are logarithms of probabilities but for a constant.
 *
 * @param row the best row, between the rows
 * @param spread root mean square distance of all rows from it, weighted by probability
 */
record Choice(double row, double spread) {

  static Choice of(double[] scores, int from, int to) {
    int best = from;
    for (int y = from; y <= to; y++) {
      best = scores[y] > scores[best] ? y : best;
    }
    double total = 0;
    double square = 0;
    for (int y = from; y <= to; y++) {
      double p = Math.exp(scores[y] - scores[best]);
      total += p;
      square += p * (y - best) * (y - best);
    }
    double peak = best > from && best < to ? Parabola.peak(scores, best) : best;
    return new Choice(peak, Math.sqrt(square / total));
  }
}
