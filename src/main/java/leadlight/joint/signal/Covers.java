package leadlight.joint.signal;

import java.util.List;
import leadlight.joint.cut.Signals;

/**
 * Tells joints that something lies over. A fault changes a joint, or a place in a gap; what covers
 * a joint changes the gaps on both of its sides along their whole length.
 */
public final class Covers {

  private final double[] strangeness;
  private final double from;

  /**
   * Takes the row's gaps.
   *
   * @param from usual strangeness, along a gap's length, from which the gap counts as covered
   */
  public Covers(List<Signals> gaps, double from) {
    this.strangeness = gaps.stream().mapToDouble(gap -> gap.get("gap_usual_reach")).toArray();
    this.from = from;
  }

  /**
   * Whether the joint at this place, from 0, is covered; an end joint must share a covered gap
   * pair.
   */
  public boolean covers(int joint) {
    int left = joint == 0 ? 0 : joint - 1;
    int right = joint == 0 ? 1 : joint;
    if (right > strangeness.length - 1) {
      right = strangeness.length - 1;
      left = right - 1;
    }
    return strangeness[left] >= from && strangeness[right] >= from;
  }
}
