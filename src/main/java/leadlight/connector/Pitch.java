package leadlight.connector;

import java.util.List;
import java.util.TreeMap;
import leadlight.model.row.LandSpec;

/** The nominal pitch of a row. */
final class Pitch {

  /** Distances that differ by less count as one: drawings give pitches to 0.01 mm or coarser. */
  private static final double SAME_MM = 0.005;

  private Pitch() {}

  /** The commonest distance between neighbours, the shorter of two equally common ones. */
  static double commonestMm(List<LandSpec> lands) {
    TreeMap<Long, Integer> counts = new TreeMap<>();
    for (int i = 1; i < lands.size(); i++) {
      double distanceMm = lands.get(i).uMm() - lands.get(i - 1).uMm();
      counts.merge(Math.round(distanceMm / SAME_MM), 1, Integer::sum);
    }
    long best = counts.firstKey();
    for (long bin : counts.keySet()) {
      best = counts.get(bin) > counts.get(best) ? bin : best;
    }
    return meanInBin(lands, best);
  }

  private static double meanInBin(List<LandSpec> lands, long bin) {
    double sumMm = 0;
    int count = 0;
    for (int i = 1; i < lands.size(); i++) {
      double distanceMm = lands.get(i).uMm() - lands.get(i - 1).uMm();
      if (Math.round(distanceMm / SAME_MM) == bin) {
        sumMm += distanceMm;
        count++;
      }
    }
    return Math.round(sumMm / count * 1e6) / 1e6;
  }
}
