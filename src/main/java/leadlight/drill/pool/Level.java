package leadlight.drill.pool;

import leadlight.trial.truth.TrueClass;

/** How hard the joints of a set are. */
public enum Level {
  /** Far from every limit. */
  CLEAR,
  /** As they come; what is too close to a limit to be counted stays out. */
  MIXED,
  /** Near a limit, or such that people and tool differed; some are not counted. */
  BORDERLINE;

  public boolean takes(PoolJoint joint) {
    return switch (this) {
      case CLEAR -> !joint.borderline();
      case MIXED -> joint.known().verdict() != TrueClass.LIMIT;
      case BORDERLINE -> joint.borderline();
    };
  }
}
