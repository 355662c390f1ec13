package leadlight.connector.footprint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.Pad;

/**
 * Finds rows of lands: in a line along x or y, of one length, near-evenly pitched, longer than
 * wide. Takes the longest row first and goes on with what is left.
 */
final class RowSearch {

  /** Lands of one row agree to this: drawings are dimensioned to 0.01 mm. */
  private static final double AGREE_MM = 0.011;

  /** A gap beyond this many pitches ends a row; a Type-C row has 1.6, one missing pin makes 2. */
  private static final double LARGEST_GAP = 2.5;

  /** A lead's land is longer than wide; balls and pads of passive parts are not. */
  private static final double LEAST_ASPECT = 1.2;

  private static final int FEWEST = 3;

  private RowSearch() {}

  static List<LandRun> rows(List<Pad> pads) {
    List<Pad> left =
        new ArrayList<>(
            pads.stream().filter(p -> p.kind() == Kind.SURFACE && p.straight()).toList());
    List<LandRun> rows = new ArrayList<>();
    for (Optional<LandRun> best = longest(left); best.isPresent(); best = longest(left)) {
      rows.add(best.get());
      left.removeAll(best.get().lands());
    }
    return rows;
  }

  private static Optional<LandRun> longest(List<Pad> pads) {
    List<LandRun> runs = new ArrayList<>();
    for (boolean alongX : new boolean[] {true, false}) {
      for (List<Pad> line : clusters(pads, pad -> LandRun.across(pad, alongX))) {
        for (List<Pad> equal : clusters(line, pad -> LandRun.length(pad, alongX))) {
          runs.addAll(runs(equal, alongX));
        }
      }
    }
    return runs.stream().min(LandRun.LONGEST_FIRST);
  }

  /** Splits by a value where it jumps. */
  private static List<List<Pad>> clusters(List<Pad> pads, ToDoubleFunction<Pad> by) {
    List<Pad> sorted = pads.stream().sorted(Comparator.comparingDouble(by)).toList();
    List<List<Pad>> clusters = new ArrayList<>();
    for (Pad pad : sorted) {
      List<Pad> last = clusters.isEmpty() ? null : clusters.get(clusters.size() - 1);
      if (last == null || by.applyAsDouble(pad) - by.applyAsDouble(last.get(0)) > AGREE_MM) {
        last = new ArrayList<>();
        clusters.add(last);
      }
      last.add(pad);
    }
    return clusters;
  }

  private static List<LandRun> runs(List<Pad> line, boolean alongX) {
    if (line.size() < FEWEST) {
      return List.of();
    }
    List<Pad> sorted =
        line.stream()
            .sorted(Comparator.comparingDouble(pad -> LandRun.along(pad, alongX)))
            .toList();
    double largestMm = LARGEST_GAP * medianGap(sorted, alongX);
    List<LandRun> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size() || gap(sorted, i, alongX) > largestMm) {
        LandRun run = new LandRun(sorted.subList(start, i), alongX);
        if (likeLeads(run)) {
          runs.add(run);
        }
        start = i;
      }
    }
    return runs;
  }

  private static boolean likeLeads(LandRun run) {
    List<Pad> lands = run.lands();
    if (lands.size() < FEWEST) {
      return false;
    }
    for (int i = 1; i < lands.size(); i++) {
      double widths =
          LandRun.width(lands.get(i - 1), run.alongX()) + LandRun.width(lands.get(i), run.alongX());
      if (gap(lands, i, run.alongX()) <= widths / 2) {
        return false;
      }
    }
    double width = median(lands, pad -> LandRun.width(pad, run.alongX()));
    return median(lands, pad -> LandRun.length(pad, run.alongX())) >= LEAST_ASPECT * width;
  }

  private static double gap(List<Pad> sorted, int i, boolean alongX) {
    return LandRun.along(sorted.get(i), alongX) - LandRun.along(sorted.get(i - 1), alongX);
  }

  private static double medianGap(List<Pad> sorted, boolean alongX) {
    double[] gaps = new double[sorted.size() - 1];
    for (int i = 1; i < sorted.size(); i++) {
      gaps[i - 1] = gap(sorted, i, alongX);
    }
    Arrays.sort(gaps);
    return gaps[gaps.length / 2];
  }

  private static double median(List<Pad> pads, ToDoubleFunction<Pad> of) {
    double[] values = pads.stream().mapToDouble(of).sorted().toArray();
    return values[values.length / 2];
  }
}
