package leadlight.leg.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The signals of the ring of copper around the hole, cell by cell: does solder cover it. */
public final class RingCells {

  private static final double[] CELLS = {0.04, 0.2, 0.36, 0.52, 0.68, 0.84, 0.96};

  private static final List<String> FOR_CELLS =
      List.of(
          "gap_darkest",
          "gap_light",
          "gap_outer_light",
          "hole_step",
          "hole_edge",
          "hole_edge_typical",
          "hole_step_typical",
          "ring_spread",
          "ring_spread_typical",
          "ring_warm_typical",
          "ring_slope",
          "ring_slope_typical",
          "gap_light_typical",
          "board_light");

  private final LegSectors sectors;

  public RingCells(LegSectors sectors) {
    this.sectors = sectors;
  }

  /**
   * The signals of the cells, sector by sector and in each from the hole's edge to the land's.
   *
   * @param ofSectors the signals of the sectors that they lie in
   */
  public List<Map<String, Double>> signals(List<Map<String, Double>> ofSectors) {
    double[][] light = new double[LegSectors.COUNT][CELLS.length];
    double[][] warm = new double[LegSectors.COUNT][CELLS.length];
    double[][] green = new double[LegSectors.COUNT][CELLS.length];
    for (int i = 0; i < LegSectors.COUNT; i++) {
      for (int k = 0; k < CELLS.length; k++) {
        double[] rgb = sectors.ring(i, CELLS[k]);
        light[i][k] = LegSectors.light(rgb) / sectors.bright();
        warm[i][k] = LegSectors.warm(rgb);
        green[i][k] = LegSectors.green(rgb);
      }
    }
    List<Map<String, Double>> cells = new ArrayList<>();
    for (int i = 0; i < LegSectors.COUNT; i++) {
      for (int k = 0; k < CELLS.length; k++) {
        Map<String, Double> cell = new LinkedHashMap<>();
        int last = CELLS.length - 1;
        cell.put("cell", (double) k);
        cell.put("light", light[i][k]);
        cell.put("warm", warm[i][k]);
        cell.put("green", green[i][k]);
        cell.put("lighter_than_inside", light[i][k] - light[i][Math.max(0, k - 1)]);
        cell.put("lighter_than_outside", light[i][k] - light[i][Math.min(last, k + 1)]);
        cell.put("warmer_than_innermost", warm[i][k] - warm[i][0]);
        cell.put("warmer_than_outermost", warm[i][k] - warm[i][last]);
        cell.put("lighter_than_outermost", light[i][k] - light[i][last]);
        cell.put("lighter_than_innermost", light[i][k] - light[i][0]);
        cell.put("step_outward", hardest(light[i], k, last));
        cell.put("step_inward", hardest(light[i], 0, k));
        cell.put("step_outward_round", hardestRound(light, k, last));
        cell.put("step_inward_round", hardestRound(light, 0, k));
        cell.put("light_round", round(light, k));
        cell.put("warm_round", round(warm, k));
        cell.put("light_unlike_round", light[i][k] - round(light, k));
        cell.put("warm_unlike_round", warm[i][k] - round(warm, k));
        cell.put("roughness", rough(light, i, k));
        for (String name : FOR_CELLS) {
          cell.put(name, ofSectors.get(i).get(name));
        }
        cells.add(cell);
      }
    }
    return cells;
  }

  private static double round(double[][] of, int k) {
    return Arrays.stream(of).mapToDouble(it -> it[k]).average().orElseThrow();
  }

  /** The hardest change of light between neighbouring cells: where solder ends on the land. */
  private static double hardest(double[] light, int from, int to) {
    double most = 0;
    for (int k = from; k < to; k++) {
      most = Math.max(most, Math.abs(light[k + 1] - light[k]));
    }
    return most;
  }

  /** The same on the mean over all directions: an edge that runs round the land. */
  private static double hardestRound(double[][] light, int from, int to) {
    double most = 0;
    for (int k = from; k < to; k++) {
      int inner = k;
      most =
          Math.max(
              most,
              Arrays.stream(light)
                  .mapToDouble(it -> Math.abs(it[inner + 1] - it[inner]))
                  .average()
                  .orElseThrow());
    }
    return most;
  }

  /** Spread of light among neighbours: solder is mirror-like, bare copper even. */
  private static double rough(double[][] light, int i, int k) {
    double[] near = new double[2 * LegSectors.NEAR + 1];
    for (int other = -LegSectors.NEAR; other <= LegSectors.NEAR; other++) {
      near[other + LegSectors.NEAR] = light[Math.floorMod(i + other, LegSectors.COUNT)][k];
    }
    return LegSectors.spread(near);
  }
}
