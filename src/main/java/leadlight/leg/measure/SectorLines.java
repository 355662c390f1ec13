package leadlight.leg.measure;

import leadlight.leg.find.LegRequest;

/**
 * The deepest thin dark line that the way from the middle to the hole's edge crosses in a sector:
 * how much darker it is than the lightest closely before and behind it. Light of the lightest
 * channel, so that a fillet that mirrors a coloured board is none.
 */
final class SectorLines {

  private final PartingTuning.AcrossSector tuning;
  private final LegCut cut;
  private final LegRequest.Leg leg;
  private final double dim;

  /**
   * Takes one leg.
   *
   * @param bright the bright end of the land, grey levels
   */
  SectorLines(PartingTuning.AcrossSector tuning, LegCut cut, LegRequest.Leg leg, double bright) {
    this.tuning = tuning;
    this.cut = cut;
    this.leg = leg;
    this.dim = tuning.dim().value() * bright;
  }

  /** Depth of a line whose banks may lie far apart. */
  double wide(int sector) {
    return deepest(sector, tuning.wide().value());
  }

  /** Depth of a line whose banks lie close together. */
  double narrow(int sector) {
    return deepest(sector, tuning.narrow().value());
  }

  private double deepest(int sector, double width) {
    double dx = LegSectors.dx(sector);
    double dy = LegSectors.dy(sector);
    double reach = tuning.to().value() * leg.hole().reachMm(dx, dy) * cut.pxPerMm();
    double[] light = new double[(int) reach + 1];
    for (int i = 0; i < light.length; i++) {
      light[i] = cut.lightest(dx * i, dy * i);
    }
    int near = (int) Math.max(Math.rint(width * LegCut.LENGTH_PX), Math.ceil(2 * cut.perPhotoPx()));
    double deepest = 0;
    for (int i = 0; i < light.length; i++) {
      double before = lightest(light, i - near, i);
      double behind = lightest(light, i, i + near);
      double bank = Math.min(before, behind);
      deepest = Math.max(deepest, (bank - light[i]) / Math.max(dim, bank));
    }
    return deepest;
  }

  private static double lightest(double[] light, int from, int to) {
    double most = 0;
    for (int i = Math.max(0, from); i <= Math.min(light.length - 1, to); i++) {
      most = Math.max(most, light[i]);
    }
    return most;
  }
}
