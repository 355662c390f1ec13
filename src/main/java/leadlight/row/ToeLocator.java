package leadlight.row;

import java.util.ArrayList;
import java.util.List;

/**
 * Where toes, heels and land ends lie along v, common to the row, from the strip folded by its
 * lattice; the body is on the strip's upper side.
 *
 * <p>The foot's top is flat and even under any lamp; the toe is where that ends. Usually the
 * picture turns darker there (the lead's wall, the start of the fillet); a bright band that follows
 * belongs to the fillet. Where a low lamp shows nothing but the band, the toe lies a little before
 * it.
 *
 * @param landToe open end of the lands
 * @param toe open end of the leads
 * @param heel where the leads turn up
 * @param landHeel end of the lands at the body, a usual distance behind the heel
 * @param uToe standard uncertainty of {@code toe}, pitches
 */
record ToeLocator(double landToe, double toe, double heel, double landHeel, double uToe) {

  static ToeLocator of(Strip strip, Lattice lattice, Zone zone, double pitchMm, ToeTuning tuning) {
    double landToe =
        landToe(new FoldProfile(strip, lattice, 0.2, 0.02), zone, tuning.openingEdge());
    FoldProfile profile = new FoldProfile(strip, lattice, 0.14, 0.0375);
    double least = Math.min(zone.from() + tuning.shortestLead(), landToe - 0.1);
    double[] toe = toe(profile, landToe, least, pitchMm, tuning);
    double heel = Math.min(toe[0], Math.max(zone.from(), heel(profile, toe[0], pitchMm, tuning)));
    double landHeel = Math.max(zone.from(), heel - tuning.landBehindHeelMm() / pitchMm);
    return new ToeLocator(landToe, toe[0], heel, landHeel, toe[1]);
  }

  /** Half-way between the metal's colour and that of the board ahead of it. */
  private static double landToe(FoldProfile profile, Zone zone, double openingEdge) {
    double[] board = profile.typical(profile.y(zone.to() + 0.6), profile.y(zone.to() + 1.2));
    int inner = profile.y(zone.to() - 1.2);
    int outer = profile.y(zone.to() - 0.4);
    double[] levels = new double[outer - inner + 1];
    for (int y = inner; y <= outer; y++) {
      levels[y - inner] = profile.distance(y, board);
    }
    double half = 0.5 * LeastSquares.median(levels);
    int y = profile.y(zone.to() + 0.6);
    while (y > inner && profile.distance(y, board) < half) {
      y--;
    }
    double at = profile.distance(y, board);
    double next = profile.distance(y + 1, board);
    return profile.v(y + (at > next ? Math.min(1, (at - half) / (at - next)) : 0)) - openingEdge;
  }

  private static double[] toe(
      FoldProfile p, double landToe, double least, double pitchMm, ToeTuning t) {
    int from = p.y(Math.max(least, landToe - t.farthestMm() / pitchMm));
    int to = Math.max(from, p.y(landToe - t.nearestMm() / pitchMm));
    double most = 0;
    for (int y = from; y <= to; y++) {
      most = Math.max(most, p.change(y));
    }
    List<Integer> peaks = new ArrayList<>();
    for (int y = from; y <= to; y++) {
      if (p.isPeak(y) && p.change(y) > t.faintShare() * most) {
        peaks.add(y);
      }
    }
    int rise = firstRise(p, peaks, t.strongShare() * most, t.widestBand());
    int fall = strongestFall(p, peaks, from, rise < 0 ? to : rise);
    if (fall >= 0) {
      return new double[] {p.peak(fall), t.uFall()};
    }
    if (rise < 0) {
      return new double[] {Math.max(least, landToe - t.usualMm() / pitchMm), t.uGuess()};
    }
    int after = strongestFall(p, peaks, rise, p.y(p.v(rise) + t.ridge()));
    if (after >= 0 && p.change(after) > t.ridgeShare() * p.change(rise)) {
      return new double[] {p.peak(after), t.uFall()};
    }
    return most < t.flatStep()
        ? new double[] {p.peak(rise), t.uFall()}
        : new double[] {p.peak(rise) - t.bandAheadMm() / pitchMm, t.uBand()};
  }

  /** The fillet's band: a strong rise that no stronger fall follows further on, as after a heel. */
  private static int firstRise(FoldProfile p, List<Integer> peaks, double strong, double widest) {
    for (int y : peaks) {
      int far = strongestFall(p, peaks, p.y(p.v(y) + widest), p.rows());
      boolean heel = far >= 0 && p.change(far) > p.change(y);
      if (p.rises(y) && p.change(y) >= strong && !heel) {
        return y;
      }
    }
    return -1;
  }

  private static int strongestFall(FoldProfile p, List<Integer> peaks, int from, int to) {
    int best = -1;
    for (int y : peaks) {
      if (y >= from && y <= to && !p.rises(y) && (best < 0 || p.change(y) > p.change(best))) {
        best = y;
      }
    }
    return best;
  }

  /** The first change of any strength when one goes from the toe to the body. */
  private static double heel(FoldProfile p, double toe, double pitchMm, ToeTuning t) {
    int far = p.y(toe - t.longestFootMm() / pitchMm);
    int near = p.y(toe - t.shortestFootMm() / pitchMm);
    double most = 0;
    for (int y = far; y <= near; y++) {
      most = Math.max(most, p.change(y));
    }
    for (int y = near; y > far; y--) {
      if (p.isPeak(y) && p.change(y) > t.heelShare() * most) {
        return p.peak(y);
      }
    }
    return p.v(near);
  }
}
