package leadlight.row.find;

import leadlight.model.row.RowSpec;

/**
 * The longest evenly pitched part of a row: what a comb can look for.
 *
 * @param first index of its first lead
 * @param count number of leads in it
 */
public record EvenRun(int first, int count) {

  private static final double SAME_PITCH = 0.02;

  public static EvenRun of(RowSpec spec) {
    EvenRun best = new EvenRun(0, 1);
    int start = 0;
    for (int i = 1; i < spec.leads(); i++) {
      double step = spec.lands().get(i).uMm() - spec.lands().get(i - 1).uMm();
      if (Math.abs(step / spec.pitchMm() - 1) > SAME_PITCH) {
        start = i;
      }
      if (i - start + 1 > best.count) {
        best = new EvenRun(start, i - start + 1);
      }
    }
    return best;
  }
}
