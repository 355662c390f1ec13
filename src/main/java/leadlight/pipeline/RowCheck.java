package leadlight.pipeline;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.joint.JointMeter;
import leadlight.model.Joint;
import leadlight.model.Reading;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
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
   * @param mostSearched how many rows' surroundings are searched at most
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
      @JsonProperty(required = true) int mostSearched,
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
        .or(() -> theOne(searched(photo, rows)))
        .map(looked -> (RowOutcome) looked.row())
        .orElse(
            doubted instanceof RowOutcome.NotFound
                ? doubted
                : new RowOutcome.NotFound(NO_JOINTS, doubted.considered()));
  }

  /** The only one that may be meant, if it clearly shows joints. */
  private Optional<Looked> theOne(List<Looked> rows) {
    List<Looked> like =
        rows.stream()
            .filter(looked -> looked.strangeness() < limits.likeBelow().value())
            .sorted(Comparator.comparingDouble(Looked::strangeness))
            .toList();
    boolean one = like.stream().allMatch(looked -> samePlace(looked.row(), like.get(0).row()));
    return !like.isEmpty() && one && like.get(0).strangeness() <= limits.takenTo().value()
        ? Optional.of(like.get(0))
        : Optional.empty();
  }

  private static boolean samePlace(RowOutcome.Found a, RowOutcome.Found b) {
    int last = a.leads().size() - 1;
    double near = SAME_WITHIN * b.pitchPx();
    return a.leads().get(0).toePx().distanceTo(b.leads().get(0).toePx()) < near
        && a.leads().get(last).toePx().distanceTo(b.leads().get(last).toePx()) < near;
  }

  /** The likeliest rows, each where its surroundings look least strange. */
  private List<Looked> searched(Photo photo, List<Looked> rows) {
    return rows.stream()
        .filter(looked -> looked.row().confidence() >= limits.searchFrom().value())
        .sorted(Comparator.comparingDouble(Looked::strangeness))
        .limit(limits.mostSearched())
        .map(looked -> nearby(photo, looked.row()))
        .toList();
  }

  /** The row moved a little aside, nearer to the body, or farther from it. */
  private Looked nearby(Photo photo, RowOutcome.Found row) {
    RowSample sample = RowSample.of(settings.row(), row);
    double least = Double.POSITIVE_INFINITY;
    RowOutcome.Found best = row;
    for (int u = -1; u <= 1; u++) {
      for (int v = -STEPS_ALONG; v <= STEPS_ALONG; v++) {
        double du = u * STEP_ACROSS;
        double dv = v * STEP_ALONG;
        double strangeness =
            middle(strangeness(photo, sample.spec(), MovedRow.by(sample.row(), du, dv)));
        if (strangeness < least) {
          least = strangeness;
          best = MovedRow.by(row, du, dv);
        }
      }
    }
    return looked(photo, best);
  }

  private Looked looked(Photo photo, RowOutcome.Found row) {
    return new Looked(row, middle(strangeness(photo, settings.row(), row)));
  }

  private double[] strangeness(Photo photo, RowSpec spec, RowOutcome.Found row) {
    return glance(photo, spec, row).stream()
        .mapToDouble(SecondReader.Glance::strangeness)
        .toArray();
  }

  private List<SecondReader.Glance> glance(Photo photo, RowSpec spec, RowOutcome.Found row) {
    return SecondReader.builtIn().glance(meter.pictures(photo.frame(), spec, row));
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
    double[] strangeness = strangeness(photo, settings.row(), row);
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
      List<SecondReader.Glance> there = glance(photo, settings.row(), moved);
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
