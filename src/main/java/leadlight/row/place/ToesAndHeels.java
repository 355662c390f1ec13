package leadlight.row.place;

import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.ToeTuning;

/**
 * Where toes, heels and land ends lie along v, common to the row; the body is on the strip's upper
 * side.
 *
 * <p>The lands' open end and then the toe are the likeliest rows by a weighted sum of cues each
 * (multinomial logit; the weights and the pictures they were fitted on are data), so that no single
 * cue decides: under one lamp the fillet is a bright band, under another dark, and traces may go on
 * at the pitch.
 *
 * @param landToe open end of the lands
 * @param toe open end of the leads
 * @param heel where the leads turn up
 * @param landHeel end of the lands at the body, a usual distance behind the heel
 * @param uToe standard uncertainty of {@code toe}, pitches
 */
record ToesAndHeels(double landToe, double toe, double heel, double landHeel, double uToe) {

  static ToesAndHeels of(
      Strip strip, Lattice lattice, Zone zone, double pitchMm, ToeTuning tuning) {
    LengthProfiles profiles = LengthProfiles.of(strip, lattice);
    Choice land = landEnd(profiles, strip, zone, tuning);
    Choice toe = toe(profiles, strip, land.row(), pitchMm, tuning);
    double toeV = strip.v(toe.row());
    FoldProfile fold = new FoldProfile(strip, lattice, 0.14, 0.0375);
    double heel = Math.min(toeV, Math.max(zone.from(), heel(fold, toeV, pitchMm, tuning)));
    double landHeel = Math.max(zone.from(), heel - tuning.landBehindHeelMm() / pitchMm);
    double spread = toe.spread() / strip.perPitch();
    return new ToesAndHeels(strip.v(land.row()), toeV, heel, landHeel, uToe(spread, tuning));
  }

  private static Choice landEnd(LengthProfiles p, Strip strip, Zone zone, ToeTuning tuning) {
    int from = within(strip, strip.y(zone.middle()));
    int to = Math.max(from, within(strip, strip.y(zone.to() + tuning.beyondZone())));
    double[] scores = LandEndCues.of(p, strip, zone).score(tuning.landEndWeights());
    return Choice.of(scores, from, to);
  }

  private static Choice toe(
      LengthProfiles p, Strip strip, double landToe, double pitchMm, ToeTuning tuning) {
    double perMm = strip.perPitch() / pitchMm;
    int from = within(strip, landToe - tuning.farthestMm() * perMm);
    int to = Math.max(from, within(strip, landToe - tuning.nearestMm() * perMm));
    Cues cues = ToeCues.of(p, strip.perPitch(), pitchMm, landToe, from, to);
    return Choice.of(cues.score(tuning.toeWeights()), from, to);
  }

  private static int within(Strip strip, double row) {
    return Math.max(1, Math.min(strip.height() - 2, (int) Math.round(row)));
  }

  private static double uToe(double spread, ToeTuning t) {
    double beyond = Math.sqrt(Math.max(0, spread * spread - t.aim() * t.aim()));
    return Math.hypot(t.uLeast(), t.spreadShare() * beyond);
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
