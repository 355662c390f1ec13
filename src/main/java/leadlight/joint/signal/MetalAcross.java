package leadlight.joint.signal;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Zone;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Quantiles;

/**
 * Whether a gap is crossed by something as bright and as coloured as the row's metal, told without
 * comparing it with other gaps: a row may be flooded throughout.
 *
 * <p>Each place of a gap gets a share: 1 if it has the colour of the lead tops, 0 if it is as far
 * from it as the board beyond the lands' open ends is, in the space of light and two colour
 * differences. Highlights count as metal: only where the board is the lighter one is more light a
 * difference. An open gap has a way from the heel to beyond the toes on which no place looks like
 * metal; the gap's share is the greatest that cannot be avoided on the best such way, a minimax
 * path, found row by row (dynamic programming, as for shortest paths without a way back: Bellman
 * 1957).
 */
final class MetalAcross {

  private static final JointTuning.Metal METAL = JointTuning.builtIn().metal();

  /** A column: gaps of even rows are one pitch, but for what drawings round. */
  private static final double PLAY = 1.0 / PatchGrid.DENSITY;

  /** Of so little difference no share can be told; keeps the quotient finite. */
  private static final double LEAST_SQUARE = 1e-6;

  private final RowSpec spec;
  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;
  private final double[] metal;
  private final double apart;
  private final boolean highlights;
  private final int first;
  private final int last;

  MetalAcross(RowSpec spec, List<LevelledPatch> joints, RowGeometry geometry, double[] metal) {
    this.spec = spec;
    this.joints = joints;
    this.geometry = geometry;
    this.metal = metal;
    double[] board = board(joints, geometry);
    double square = LEAST_SQUARE;
    for (int plane = 0; plane < metal.length; plane++) {
      square += (metal[plane] - board[plane]) * (metal[plane] - board[plane]);
    }
    this.apart = Math.sqrt(square);
    this.highlights = metal[0] >= board[0];
    this.first = PatchGrid.row(METAL.ofFoot() * geometry.heelY());
    this.last = PatchGrid.row(geometry.ahead());
  }

  private static double[] board(List<LevelledPatch> joints, RowGeometry geometry) {
    double to = Math.min(PatchGrid.Y_TO, geometry.ahead() + METAL.boardTo());
    double from = Math.min(geometry.ahead() + METAL.beyondFrom(), to - METAL.boardLeast());
    double[][] colours = new double[3][joints.size()];
    for (int i = 0; i < joints.size(); i++) {
      float[][] planes = planes(joints.get(i));
      for (int plane = 0; plane < planes.length; plane++) {
        colours[plane][i] = new Zone(planes[plane], -0.5, 0.5, from, to).median();
      }
    }
    return Arrays.stream(colours).mapToDouble(Quantiles::median).toArray();
  }

  private static float[][] planes(LevelledPatch joint) {
    return new float[][] {joint.landLight(), joint.landRedGreen(), joint.landYellowBlue()};
  }

  /** Adds the share of each gap, and what tells whether it can be believed. */
  void addTo(List<Signals> gaps) {
    for (int i = 0; i < gaps.size(); i++) {
      gaps.get(i)
          .put("gap_metal_across", across(i))
          .put("gap_metal_apart", apart)
          .put("gap_metal_light", metal[0])
          .put("gap_width_px", widthPx(i));
    }
  }

  /** From land to land. */
  private double widthPx(int gap) {
    double free =
        apart(gap)
            - GapSignals.landHalf(spec, geometry, gap)
            - GapSignals.landHalf(spec, geometry, gap + 1);
    return Math.max(0, free) * joints.get(gap).patch().pitchPx();
  }

  private double apart(int gap) {
    return (spec.lands().get(gap + 1).uMm() - spec.lands().get(gap).uMm()) / spec.pitchMm();
  }

  /** A gap that runs on beyond what is cut out may be open there. */
  private double across(int gap) {
    if (apart(gap) > PatchGrid.X_HALF + PLAY) {
      return 0;
    }
    int left = PatchGrid.column(0);
    int columns = PatchGrid.column(apart(gap)) - left + 1;
    float[][] planes = planes(joints.get(gap));
    double[] way = new double[columns];
    Arrays.fill(way, Double.NEGATIVE_INFINITY);
    for (int y = first; y <= last; y++) {
      double[] next = new double[columns];
      for (int x = 0; x < columns; x++) {
        double before =
            Math.min(way[x], Math.min(way[Math.max(0, x - 1)], way[Math.min(columns - 1, x + 1)]));
        next[x] = Math.max(before, share(planes, y * PatchGrid.WIDTH + left + x));
      }
      way = next;
    }
    return Arrays.stream(way).min().orElseThrow();
  }

  private double share(float[][] planes, int at) {
    double light = planes[0][at] - metal[0];
    double sum = highlights && light > 0 ? 0 : light * light;
    for (int plane = 1; plane < planes.length; plane++) {
      double off = planes[plane][at] - metal[plane];
      sum += off * off;
    }
    return 1 - Math.sqrt(sum) / apart;
  }
}
