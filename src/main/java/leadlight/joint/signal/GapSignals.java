package leadlight.joint.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Quantiles;

/**
 * What lies in the gap between two joints. Metal across a gap is sought as a path: at each place
 * along the leads, the column of the gap that looks most like the row's typical gap there. Only
 * what leaves no such column spans the gap; a solder ball or a speck leaves one, and residue has
 * the wrong colour.
 */
final class GapSignals {

  /** Kept clear of the lands' edges, pitches. */
  private static final double MARGIN = 0.03;

  private final RowSpec spec;
  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;
  private final List<Gap> gaps;
  private final double[][] typical;
  private final double from;
  private final double to;

  GapSignals(RowSpec spec, List<LevelledPatch> joints, RowGeometry geometry) {
    this.spec = spec;
    this.joints = joints;
    this.geometry = geometry;
    this.from = Math.max(PatchGrid.Y_FROM, geometry.heelY() - 0.25);
    this.to = geometry.ahead() + 0.05;
    this.gaps = new ArrayList<>();
    for (int i = 0; i + 1 < joints.size(); i++) {
      gaps.add(gap(i));
    }
    this.typical = typicalGap();
  }

  /** One entry a gap: entry i lies between joint i and joint i + 1. */
  List<Signals> measure() {
    double[] metal = DirtSignals.metal(joints, geometry);
    List<Signals> signals = new ArrayList<>();
    for (Gap gap : gaps) {
      signals.add(measure(gap, metal));
    }
    new MetalAcross(spec, joints, geometry, metal).addTo(signals);
    return signals;
  }

  /**
   * The gap between land i and the next, on as many columns as the row's narrow gaps have, so that
   * gaps of an unevenly pitched row can be compared.
   */
  private Gap gap(int i) {
    double x0 = landHalf(i) + MARGIN;
    double apart = (spec.lands().get(i + 1).uMm() - spec.lands().get(i).uMm()) / spec.pitchMm();
    double x1 = Math.max(x0, apart - landHalf(i + 1) - MARGIN);
    double usual = Math.max(0, 1 - 2 * geometry.landHalf() - 2 * MARGIN);
    int columns = (int) Math.round(usual * PatchGrid.DENSITY) + 1;
    int rows = PatchGrid.row(to) - PatchGrid.row(from) + 1;
    LevelledPatch joint = joints.get(i);
    return new Gap(
        columns,
        rows,
        sampled(joint.landLight(), x0, x1, columns),
        sampled(joint.landRedGreen(), x0, x1, columns),
        sampled(joint.landYellowBlue(), x0, x1, columns));
  }

  private double landHalf(int i) {
    return landHalf(spec, geometry, i);
  }

  /** Half a land's width, pitches: as stated, else as the row shows it. */
  static double landHalf(RowSpec spec, RowGeometry geometry, int i) {
    OptionalDouble stated = spec.lands().get(i).widthMm();
    return stated.isPresent() ? stated.getAsDouble() / spec.pitchMm() / 2 : geometry.landHalf();
  }

  private double[] sampled(float[] plane, double x0, double x1, int columns) {
    int top = PatchGrid.row(from);
    int rows = PatchGrid.row(to) - top + 1;
    double[] values = new double[rows * columns];
    for (int y = 0; y < rows; y++) {
      for (int c = 0; c < columns; c++) {
        double x = columns == 1 ? (x0 + x1) / 2 : x0 + (x1 - x0) * c / (columns - 1);
        values[y * columns + c] = plane[(top + y) * PatchGrid.WIDTH + PatchGrid.column(x)];
      }
    }
    return values;
  }

  private double[][] typicalGap() {
    int size = gaps.get(0).light.length;
    double[][] typical = new double[3][size];
    double[] pixel = new double[gaps.size()];
    for (int plane = 0; plane < 3; plane++) {
      for (int i = 0; i < size; i++) {
        for (int k = 0; k < pixel.length; k++) {
          pixel[k] = gaps.get(k).planes()[plane][i];
        }
        typical[plane][i] = Quantiles.middle(pixel);
      }
    }
    return typical;
  }

  private Signals measure(Gap gap, double[] metal) {
    double[] span = new double[gap.height];
    double[] reach = new double[gap.height];
    for (int y = 0; y < gap.height; y++) {
      double least = Double.MAX_VALUE;
      double sum = 0;
      for (int x = 0; x < gap.width; x++) {
        double strange = strangeness(gap, y * gap.width + x);
        least = Math.min(least, strange);
        sum += strange / gap.width;
      }
      span[y] = least;
      reach[y] = sum;
    }
    return describe(gap, Stats.smoothed(span), Stats.smoothed(reach), metal);
  }

  private double strangeness(Gap gap, int at) {
    double[][] planes = gap.planes();
    double sum = 0;
    for (int plane = 0; plane < 3; plane++) {
      double difference = planes[plane][at] - typical[plane][at];
      sum += difference * difference;
    }
    return Math.sqrt(sum);
  }

  private Signals describe(Gap gap, double[] span, double[] reach, double[] metal) {
    int at = Stats.indexOfGreatest(span);
    double greatest = span[at];
    int first = at;
    int last = at;
    while (first > 0 && span[first - 1] > greatest / 2) {
      first--;
    }
    while (last + 1 < span.length && span[last + 1] > greatest / 2) {
      last++;
    }
    Signals signals = new Signals();
    signals.put("gap_span", greatest);
    signals.put("gap_span_over_usual", greatest - Quantiles.middle(span));
    signals.put("gap_reach", Stats.greatest(reach));
    signals.put("gap_usual_reach", Quantiles.middle(reach));
    signals.put("gap_span_length", (last - first + 1) / (double) PatchGrid.DENSITY);
    signals.put("gap_span_place", (first + last) / 2.0 / PatchGrid.DENSITY + from);
    colours(gap, first, last, metal, signals);
    return signals;
  }

  private void colours(Gap gap, int first, int last, double[] metal, Signals signals) {
    int count = (last - first + 1) * gap.width;
    double[][] values = new double[3][count];
    double[] usual = new double[3];
    for (int plane = 0; plane < 3; plane++) {
      System.arraycopy(gap.planes()[plane], first * gap.width, values[plane], 0, count);
      double[] there = new double[count];
      System.arraycopy(typical[plane], first * gap.width, there, 0, count);
      usual[plane] = Quantiles.middle(there);
    }
    double light = Quantiles.middle(values[0]);
    double redGreen = Quantiles.middle(values[1]);
    double yellowBlue = Quantiles.middle(values[2]);
    signals.put("gap_light_change", light - usual[0]);
    signals.put("gap_highlight", Quantiles.of(values[0], 0.95) - metal[0]);
    signals.put("gap_yellow_change", yellowBlue - usual[2]);
    signals.put("gap_yellow_less_metal", yellowBlue - metal[2]);
    signals.put(
        "gap_grey_gain",
        Math.hypot(usual[1] - metal[1], usual[2] - metal[2])
            - Math.hypot(redGreen - metal[1], yellowBlue - metal[2]));
    signals.put("gap_light_range", Quantiles.of(values[0], 0.95) - Quantiles.of(values[0], 0.05));
  }

  private record Gap(
      int width, int height, double[] light, double[] redGreen, double[] yellowBlue) {

    double[][] planes() {
      return new double[][] {light, redGreen, yellowBlue};
    }
  }
}
