package leadlight.quality;

import java.util.ArrayList;
import java.util.List;

/**
 * From values to pixels.
 *
 * @param least value at {@code from}
 * @param most value at {@code to}
 * @param from pixel
 * @param to pixel
 */
record Axis(double least, double most, double from, double to) {

  /** An axis from 0 to a round value above the greatest. */
  static Axis upTo(double greatest, double from, double to) {
    double top = greatest > 0 ? greatest : 1;
    double step = step(top);
    return new Axis(0, Math.ceil(top / step - 1e-9) * step, from, to);
  }

  /** An axis of round ends over a range; from 0 if nothing lies below. */
  static Axis over(double least, double most, double from, double to) {
    if (least >= 0) {
      return upTo(most, from, to);
    }
    double step = step(Math.max(most, 0) - least);
    return new Axis(
        Math.floor(least / step + 1e-9) * step,
        Math.ceil(Math.max(most, 0) / step - 1e-9) * step,
        from,
        to);
  }

  double at(double value) {
    return from + (value - least) / (most - least) * (to - from);
  }

  /** Four to ten round values. */
  List<Double> ticks() {
    double step = step(most - least);
    List<Double> ticks = new ArrayList<>();
    long first = Math.round(least / step);
    for (long i = first; i * step <= most + 1e-9 * step; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  private static double step(double top) {
    double decade = Math.pow(10, Math.floor(Math.log10(top)));
    double share = top / decade;
    return decade * (share <= 2 ? 0.25 : share <= 5 ? 0.5 : 1);
  }

  /** As many decimals as the step needs. */
  String label(double tick) {
    int decimals = (int) Math.max(0, 2 - Math.floor(Math.log10(most - least)));
    String text = Words.fixed(tick, decimals);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }
}
