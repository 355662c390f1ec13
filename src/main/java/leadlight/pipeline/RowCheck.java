package leadlight.pipeline;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.joint.JointMeter;
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

  private final RowFinder finder;
  private final JointMeter meter;
  private final Settings settings;
  private final Limits limits = DataFile.builtIn("reader/rows.json").read(Limits.class);

  /**
   * Borders of the middle strangeness of a row's joints.
   *
   * @param doubtFrom from here on a found row is doubted
   * @param likeBelow below it a row may be meant
   * @param takenTo up to here another row is taken in its stead
   */
  record Limits(
      @JsonProperty(required = true) Border doubtFrom,
      @JsonProperty(required = true) Border likeBelow,
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

  private static double middle(double[] strangeness) {
    double[] sorted = strangeness.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /** The row that shows joints, or why there is none. */
  RowOutcome better(Photo photo, RowOutcome doubted) {
    List<Looked> like =
        finder.possible(photo.frame(), settings.row(), settings.hint()).stream()
            .map(possible -> new Looked(possible, strangeness(photo, possible)))
            .filter(looked -> looked.strangeness() < limits.likeBelow().value())
            .toList();
    if (like.size() == 1 && like.get(0).strangeness() <= limits.takenTo().value()) {
      return like.get(0).row();
    }
    return doubted instanceof RowOutcome.NotFound
        ? doubted
        : new RowOutcome.NotFound(NO_JOINTS, doubted.considered());
  }

  private double strangeness(Photo photo, RowOutcome.Found possible) {
    return middle(
        SecondReader.builtIn()
            .strangeness(meter.pictures(photo.frame(), settings.row(), possible)));
  }
}
