package leadlight.quality.sampling;

import java.util.Optional;
import leadlight.quality.sampling.SwitchingRules.LotResult;

/** A sampling plan as it is carried out: units in the order of the draw, until it decides. */
public interface Inspection {

  /** Most units that are inspected, and so drawn. */
  int units();

  /**
   * After how many units it may decide next.
   *
   * @param inspected so far, fewer than {@link #units}
   */
  int nextStop(int inspected);

  /**
   * What it decides after so many units; empty if it goes on.
   *
   * @param inspected a stop
   * @param bad nonconforming among them
   */
  Optional<LotResult> after(int inspected, int bad);

  /** Probability of acceptance for a process of this share. */
  double accepts(double share);

  /**
   * True if every unit drawn is inspected whatever is found, so that the sample's share is fair.
   */
  boolean inFull();

  /** What to do, for people. */
  String words();

  /** Where it comes from, for people. */
  String why();

  /** What was found beside what the plan asks, a sentence; after a stop that decides. */
  String against(int inspected, int bad);

  /** The share nonconforming that is accepted with a probability; 1 if all shares are, or more. */
  default double qualityAt(double acceptance) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (accepts(middle) >= acceptance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
