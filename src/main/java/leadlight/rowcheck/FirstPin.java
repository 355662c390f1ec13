package leadlight.rowcheck;

import java.util.Arrays;
import java.util.List;
import leadlight.model.joint.Joint;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.reader.SecondReader;

/** Whether a found row is counted from its true first lead. */
public final class FirstPin {

  private final RowEye eye;
  private final RowLimits limits = RowLimits.builtIn();

  /** A row with its joints at a glance, pin 1 first. */
  private record Seen(RowOutcome.Found row, List<SecondReader.Glance> joints) {

    int last() {
      return joints.size() - 1;
    }

    double[] strangeness() {
      return joints.stream().mapToDouble(SecondReader.Glance::strangeness).toArray();
    }

    double middle() {
      return RowEye.middle(strangeness());
    }

    /** Of all its joints being none. */
    double logOdds() {
      return Arrays.stream(strangeness()).map(s -> Math.log(s / (1 - s))).sum();
    }

    double odder() {
      return Math.max(joints.get(0).strangeness(), joints.get(last()).strangeness());
    }
  }

  public FirstPin(RowEye eye) {
    this.eye = eye;
  }

  /** Whether an end of the row looks odd. */
  public boolean mayBeOut(List<Joint> joints) {
    double[] strangeness =
        joints.stream()
            .mapToDouble(joint -> joint.byReader().orElseThrow().strangeness())
            .toArray();
    return Math.max(strangeness[0], strangeness[strangeness.length - 1])
        >= oddFrom(RowEye.middle(strangeness));
  }

  /**
   * The row counted from its true first lead. Where a row is found some leads off, its places at
   * one end lie on bare board and alone look odd, and beyond the other end lie as many joints like
   * the rest. In an unevenly pitched row every place is then another's.
   */
  public RowOutcome.Found inStep(Photo photo, RowOutcome.Found row) {
    Seen now = seen(photo, row);
    return eye.even() ? evenInStep(photo, now) : unevenInStep(photo, now);
  }

  private RowOutcome.Found evenInStep(Photo photo, Seen found) {
    Seen now = found;
    int left = (int) limits.mostSteps().value();
    while (left > 0) {
      int pins =
          now.joints.get(now.last()).strangeness() > now.joints.get(0).strangeness() ? -1 : 1;
      int steps = oddFrom(now, pins > 0 ? 0 : now.last(), pins);
      if (steps == 0 || steps > left) {
        return now.row;
      }
      Seen moved = seen(photo, MovedRow.byPins(now.row, pins * steps));
      for (int i = 0; i < steps; i++) {
        if (!isJoint(moved.joints.get(pins > 0 ? moved.last() - i : i), now)) {
          return now.row;
        }
      }
      now = moved;
      left -= steps;
    }
    return now.row;
  }

  /** How many places are odd from one on. */
  private int oddFrom(Seen row, int from, int step) {
    int odd = 0;
    double oddFrom = oddFrom(row.middle());
    while (odd < row.last() && row.joints.get(from + odd * step).strangeness() >= oddFrom) {
      odd++;
    }
    return odd;
  }

  /** Moved, both ends must become joints, and not at the cost of others. */
  private RowOutcome.Found unevenInStep(Photo photo, Seen found) {
    int most = (int) limits.mostSteps().value();
    RowOutcome.Found best = found.row;
    double least = found.logOdds() + 2 * Math.log(limits.jointOfOdd().value());
    for (int pitches = -most; pitches <= most; pitches++) {
      Seen moved = pitches == 0 ? found : seen(photo, MovedRow.by(found.row, pitches, 0, 0));
      if (moved.logOdds() < least) {
        least = moved.logOdds();
        best = moved.row;
      }
    }
    return best;
  }

  /** Whether a place shows a joint of the row, and clearly rather than its odd end. */
  private boolean isJoint(SecondReader.Glance place, Seen row) {
    return isJointOf(row, place) && place.strangeness() < limits.jointOfOdd().value() * row.odder();
  }

  /** Whether a place is no odder than the row's joints. */
  private boolean isJointOf(Seen row, SecondReader.Glance place) {
    return place.strangeness() < oddFrom(row.middle())
        && place.strangeness() < limits.likeBelow().value()
        && place.missing() < limits.missingTo().value();
  }

  /** Whether an evenly pitched row has joints at its ends and none beyond. */
  boolean endsAtItsEnds(Photo photo, RowOutcome.Found row) {
    if (!eye.even()) {
      return false;
    }
    Seen here = seen(photo, row);
    Seen before = seen(photo, MovedRow.byPins(row, -1));
    Seen behind = seen(photo, MovedRow.byPins(row, 1));
    return isJointOf(here, here.joints.get(0))
        && isJointOf(here, here.joints.get(here.last()))
        && !isJointOf(here, before.joints.get(0))
        && !isJointOf(here, behind.joints.get(behind.last()));
  }

  private double oddFrom(double middle) {
    return Math.max(limits.jointTo().value(), limits.oddOfMiddle().value() * middle);
  }

  private Seen seen(Photo photo, RowOutcome.Found row) {
    return new Seen(row, eye.joints(photo, row));
  }
}
