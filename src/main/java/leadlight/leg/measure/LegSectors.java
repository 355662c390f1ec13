package leadlight.leg.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.leg.find.LegRequest;

/**
 * The signals of one leg, sector by sector: what lies between leg and hole's edge, and what on the
 * ring of copper around the hole. Brightness is counted against the bright end of the whole land,
 * so that the camera's exposure drops out.
 */
public final class LegSectors {

  /** Sectors of five degrees, seen from the middle of the hole. */
  static final int COUNT = 72;

  private static final double[] GAP = {0.45, 0.55, 0.65, 0.75, 0.85, 0.92};
  private static final double[] RING = {0.1, 0.3, 0.5, 0.7, 0.9};
  private static final double[] OUTSIDE = {1.15, 1.3};

  private static final double[] INSIDE_LEG = {0.0, 0.1, 0.2};

  /** Sectors to either side that count as neighbours. */
  static final int NEAR = 3;

  private final LegCut cut;
  private final LegRequest.Leg leg;
  private final double bright;
  private final double board;
  private final SectorLines lines;

  public LegSectors(LegCut cut, LegRequest.Leg leg, PartingTuning parting) {
    this.cut = cut;
    this.leg = leg;
    List<Double> land = new ArrayList<>();
    List<Double> outside = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      for (double share : RING) {
        land.add(light(ring(i, share)));
      }
      for (double share : OUTSIDE) {
        outside.add(light(beyond(i, share)));
      }
    }
    this.bright = Math.max(1, quantile(land, 0.85));
    this.board = quantile(outside, 0.5);
    this.lines = new SectorLines(parting.acrossSector(), cut, leg, bright);
  }

  static double dx(int sector) {
    return Math.cos(2 * Math.PI * (sector + 0.5) / COUNT);
  }

  static double dy(int sector) {
    return Math.sin(2 * Math.PI * (sector + 0.5) / COUNT);
  }

  /** Share of the way from the middle to the hole's edge. */
  private double[] gap(int sector, double share) {
    double reach = share * leg.hole().reachMm(dx(sector), dy(sector));
    return cut.at(dx(sector) * reach, dy(sector) * reach);
  }

  /** Share of the way from the hole's edge to the land's. */
  double[] ring(int sector, double share) {
    double inner = leg.hole().reachMm(dx(sector), dy(sector));
    double outer = leg.land().reachMm(dx(sector), dy(sector));
    double reach = inner + share * (outer - inner);
    return cut.at(dx(sector) * reach, dy(sector) * reach);
  }

  /** Multiple of the way from the middle to the land's edge. */
  private double[] beyond(int sector, double share) {
    double reach = share * leg.land().reachMm(dx(sector), dy(sector));
    return cut.at(dx(sector) * reach, dy(sector) * reach);
  }

  /** The bright end of the land, grey levels. */
  double bright() {
    return bright;
  }

  /** From the middle of the hole to its edge in a sector. */
  double holeReachMm(int sector) {
    return leg.hole().reachMm(dx(sector), dy(sector));
  }

  /** Mean of the channels: metal is grey to gold, so none is preferred. */
  static double light(double[] rgb) {
    return (rgb[0] + rgb[1] + rgb[2]) / 3;
  }

  /** How much warmer than grey: gold and bare copper are, solder is not. */
  static double warm(double[] rgb) {
    return ((rgb[0] + rgb[1]) / 2 - rgb[2]) / Math.max(8, light(rgb));
  }

  static double green(double[] rgb) {
    return (rgb[1] - (rgb[0] + rgb[2]) / 2) / Math.max(8, light(rgb));
  }

  private static double quantile(List<Double> values, double share) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
  }

  /** The signals of each sector, clockwise from the land's x axis. */
  public List<Map<String, Double>> signals() {
    double[][] own = new double[COUNT][];
    for (int i = 0; i < COUNT; i++) {
      own[i] = own(i);
    }
    double[] typical = new double[NAMES.size()];
    for (int k = 0; k < typical.length; k++) {
      int signal = k;
      double[] column = Arrays.stream(own).mapToDouble(it -> it[signal]).sorted().toArray();
      typical[k] = column[COUNT / 2];
    }
    List<Map<String, Double>> all = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      Map<String, Double> signals = new LinkedHashMap<>();
      for (int k = 0; k < typical.length; k++) {
        double near = 0;
        for (int other = -NEAR; other <= NEAR; other++) {
          near += own[Math.floorMod(i + other, COUNT)][k] / (2 * NEAR + 1);
        }
        signals.put(NAMES.get(k), own[i][k]);
        signals.put(NAMES.get(k) + "_near", near);
        signals.put(NAMES.get(k) + "_typical", typical[k]);
      }
      signals.put("board_light", board / bright);
      signals.put("middle_light", middle() / bright);
      all.add(signals);
    }
    return all;
  }

  private double middle() {
    double sum = 0;
    for (double share : INSIDE_LEG) {
      sum += light(gap(0, share)) / INSIDE_LEG.length;
    }
    return sum;
  }

  private static final List<String> NAMES =
      List.of(
          "gap_darkest",
          "gap_light",
          "gap_spread",
          "gap_green",
          "gap_outer_light",
          "hole_step",
          "hole_edge",
          "ring_light",
          "ring_spread",
          "ring_warm",
          "ring_outer_warm",
          "ring_slope",
          "line",
          "fine_line");

  private double[] own(int sector) {
    double[] gap = new double[GAP.length];
    double greenest = 0;
    for (int k = 0; k < GAP.length; k++) {
      double[] rgb = gap(sector, GAP[k]);
      gap[k] = light(rgb) / bright;
      greenest = Math.max(greenest, green(rgb));
    }
    double[] ring = new double[RING.length];
    double warm = 0;
    for (int k = 0; k < RING.length; k++) {
      double[] rgb = ring(sector, RING[k]);
      ring[k] = light(rgb) / bright;
      warm += warm(rgb) / RING.length;
    }
    double inner = (gap[GAP.length - 1] + gap[GAP.length - 2]) / 2;
    double outer = (ring[0] + ring[1]) / 2;
    return new double[] {
      Arrays.stream(gap).min().orElseThrow(),
      mean(gap),
      spread(gap),
      greenest,
      inner,
      outer - inner,
      steepest(sector),
      mean(ring),
      spread(ring),
      warm,
      warm(ring(sector, RING[RING.length - 1])),
      ring[RING.length - 1] - ring[0],
      lines.wide(sector),
      lines.narrow(sector)
    };
  }

  /** The hardest change of light across the hole's edge. */
  private double steepest(int sector) {
    double before = light(gap(sector, 0.86)) / bright;
    double most = 0;
    for (double share = 0.9; share < 1.12; share += 0.04) {
      double here = light(gap(sector, share)) / bright;
      most = Math.max(most, Math.abs(here - before));
      before = here;
    }
    return most;
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  static double spread(double[] values) {
    double mean = mean(values);
    return Math.sqrt(
        Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }
}
