package leadlight.model.joint;

import leadlight.model.Checks;

/**
 * What an enrolled bench says of one joint.
 *
 * @param side on which side of the bench's borders the joint lies
 * @param unsoldered chance that nothing holds it, by the bench's own line, 0 to 1
 */
public record BenchOpinion(Side side, double unsoldered) {

  /** Refuses a chance outside 0 to 1. */
  public BenchOpinion {
    Checks.within("unsoldered", unsoldered, 0, 1);
  }

  /** Where a joint lies. */
  public enum Side {
    /** Looks more soldered than each joint that was shown unsoldered. */
    SOLDERED,
    /** Looks less soldered than each joint that was shown sound. */
    UNSOLDERED,
    /** Looks like joints of either kind. */
    BETWEEN,
    /** Looks like none that was shown. */
    UNLIKE_SHOWN
  }
}
