package leadlight.pipeline;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.joint.JointMeter;
import leadlight.model.Joint;
import leadlight.model.Reading;
import leadlight.model.RowOutcome;
import leadlight.model.Settings;
import leadlight.photo.Photo;
import leadlight.reader.SecondReader;
import leadlight.row.RowFinder;

/**
 * Lets the second reader look at a found row: if most of what lies at its places is unlike any
 * joint, the row is not where it was found. Then the other places, half a pitch aside and the other
 * side of the body are looked at, and the one that shows joints is taken, if there is just one.
 */
final class RowCheck {

  private static final String NO_JOINTS =
      "what was found does not look like the joints of a row; point at the row with --near, or take the"
          + " photo so that the row and the body's edge are sharp and evenly lit";

  /** Steps of the search about a row, pitches: the reader knows joints that far off their place. */
  private static final double STEP_ACROSS = 0.25;

  private static final double STEP_ALONG = 0.3;

  /** Two rows closer than this, pitches, are one; half a pitch is another. */
  private static final double SAME_WITHIN = 0.45;

  private static final int STEPS_ALONG = 3;

  private final RowFinder finder;
  private final JointMeter meter;
  private final Settings settings;
  private final Limits limits = DataFile.builtIn("reader/rows.json").read(Limits.class);

  /**
   * Borders of the middle strangeness of a row's joints.
   *
   * @param doubtFrom from here on a found row is doubted
   * @param likeBelow below it a row may be meant
   * @param searchFrom confidence from which the surroundings of a row are searched
   * @param oddOfMiddle an end joint that many times as strange as the row's middle one is odd
   * @param jointOfMiddle a place beyond an end that is at most so many times as strange holds a
   *     joint
   * @param missingTo and up to here its lead may be missing
   * @param mostSteps most leads that a row is moved along
   * @param takenTo up to here another row is taken in its stead
   */
  record Limits(
      @JsonProperty(required = true) Border doubtFrom,
      @JsonProperty(required = true) Border likeBelow,
      @JsonProperty(required = true) Border searchFrom,
      @JsonProperty(required = true) Border oddOfMiddle,
      @JsonProperty(required = true) Border jointTo,
      @JsonProperty(required = true) Border missingTo,
      @JsonProperty(required = true) int mostSteps,
      @JsonProperty(required = true) Border takenTo) {

    /** A number and where it comes from. */
    record Border(
        @JsonProperty(required = true) double value,
        @JsonProperty(required = true) String source) {}
  }

  private record Looked(RowOutcome.Found row, double strangeness) {}

  RowCheck(RowFinder finder, JointMeter meter, Settings settings) {
    this.finder = finder;
    this.meter = meter;
    this.settings = settings;
  }

  /** Whether most of these are no joints. */
  boolean doubts(List<Reading> readings) {
    return middle(readings.stream().mapToDouble(Reading::strangeness).toArray())
        >= limits.doubtFrom().value();
  }

  /** The row that shows joints, or why there is none. */
  RowOutcome better(Photo photo, RowOutcome doubted) {
    List<Looked> rows =
        finder.possible(photo.frame(), settings.row(), settings.hint()).stream()
            .map(possible -> looked(photo, possible))
            .toList();
    return theOne(rows)
        .or(() -> theOne(rows.stream().map(row -> nearby(photo, row)).toList()))
        .map(looked -> (RowOutcome) looked.row())
        .orElse(
            doubted instanceof RowOutcome.NotFound
                ? doubted
                : new RowOutcome.NotFound(NO_JOINTS, doubted.considered()));
  }

  /** The only one that may be meant, if it clearly shows joints. */
  private Optional<Looked> theOne(List<Looked> rows) {
    List<Looked> like =
        rows.stream().filter(looked -> looked.strangeness() < limits.likeBelow().value()).toList();
    return like.size() == 1 && like.get(0).strangeness() <= limits.takenTo().value()
        ? Optional.of(like.get(0))
        : Optional.empty();
  }

  /** The least strange row among those a little aside, nearer to the body, or farther from it. */
  private Looked nearby(Photo photo, Looked from) {
    if (from.row().confidence() < limits.searchFrom().value()) {
      return from;
    }
    Looked best = from;
    for (int u = -1; u <= 1; u++) {
      for (int v = -STEPS_ALONG; v <= STEPS_ALONG; v++) {
        Looked other = looked(photo, MovedRow.by(from.row(), u * STEP_ACROSS, v * STEP_ALONG));
        best = other.strangeness() < best.strangeness() ? other : best;
      }
    }
    return best;
  }

  private Looked looked(Photo photo, RowOutcome.Found row) {
    return new Looked(row, middle(strangeness(photo, row)));
  }

  private double[] strangeness(Photo photo, RowOutcome.Found row) {
    return glance(photo, row).stream().mapToDouble(SecondReader.Glance::strangeness).toArray();
  }

  private List<SecondReader.Glance> glance(Photo photo, RowOutcome.Found row) {
    return SecondReader.builtIn().glance(meter.pictures(photo.frame(), settings.row(), row));
  }

  /** Whether an end of an evenly pitched row looks odd. */
  boolean mayBeOutOfStep(List<Joint> joints) {
    double[] strangeness =
        joints.stream()
            .mapToDouble(joint -> joint.byReader().orElseThrow().strangeness())
            .toArray();
    return settings.row().even()
        && Math.max(strangeness[0], strangeness[strangeness.length - 1])
            >= limits.oddOfMiddle().value() * middle(strangeness);
  }

  /**
   * The row counted from its true first lead. Where a row is found one lead off, its end joint lies
   * on bare board and alone looks odd, and one pitch beyond the other end lies a joint like the
   * rest.
   */
  RowOutcome.Found inStep(Photo photo, RowOutcome.Found row) {
    RowOutcome.Found now = row;
    double[] strangeness = strangeness(photo, row);
    for (int step = 0; step < limits.mostSteps(); step++) {
      int last = strangeness.length - 1;
      int pins = strangeness[last] > strangeness[0] ? -1 : 1;
      double odd = strangeness[pins < 0 ? last : 0];
      double inner = strangeness[pins < 0 ? last - 1 : 1];
      double oddFrom = limits.oddOfMiddle().value() * middle(strangeness);
      if (odd < oddFrom || inner >= oddFrom) {
        return now;
      }
      RowOutcome.Found moved = MovedRow.byPins(now, pins);
      List<SecondReader.Glance> there = glance(photo, moved);
      SecondReader.Glance beyond = there.get(pins < 0 ? 0 : last);
      boolean joint =
          beyond.strangeness() < Math.min(limits.jointTo().value(), odd / 2)
              && beyond.missing() < limits.missingTo().value();
      if (!joint) {
        return now;
      }
      now = moved;
      strangeness = there.stream().mapToDouble(SecondReader.Glance::strangeness).toArray();
    }
    return now;
  }

  private static double middle(double[] strangeness) {
    double[] sorted = strangeness.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
