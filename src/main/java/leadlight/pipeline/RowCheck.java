package leadlight.pipeline;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.joint.JointMeter;
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
      "what was found does not look like the joints of a row; point at the row, or take the photo"
          + " so that the row and the body's edge are sharp and evenly lit";

  private final RowFinder finder;
  private final JointMeter meter;
  private final Settings settings;
  private final RowLimits limits = RowLimits.builtIn();

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

  private boolean samePlace(RowOutcome.Found a, RowOutcome.Found b) {
    int last = a.leads().size() - 1;
    double near = limits.sameWithin().value() * b.pitchPx();
    return a.leads().get(0).toePx().distanceTo(b.leads().get(0).toePx()) < near
        && a.leads().get(last).toePx().distanceTo(b.leads().get(last).toePx()) < near;
  }

  /** The likeliest rows, each where its surroundings look least strange. */
  private List<Looked> searched(Photo photo, List<Looked> rows) {
    return rows.stream()
        .filter(looked -> looked.row().confidence() >= limits.search().confidenceFrom())
        .sorted(Comparator.comparingDouble(Looked::strangeness))
        .limit(limits.search().mostRows())
        .map(looked -> nearby(photo, looked.row()))
        .toList();
  }

  /** The row moved a little aside, nearer to the body, or farther from it. */
  private Looked nearby(Photo photo, RowOutcome.Found row) {
    RowSample sample = RowSample.of(settings.row(), row);
    double least = Double.POSITIVE_INFINITY;
    RowOutcome.Found best = row;
    RowLimits.Search search = limits.search();
    for (int u = -search.stepsAcross(); u <= search.stepsAcross(); u++) {
      for (int v = -search.stepsAlong(); v <= search.stepsAlong(); v++) {
        double du = u * search.stepAcross();
        double dv = v * search.stepAlong();
        double strangeness =
            middle(strangeness(photo, sample.spec(), MovedRow.by(sample.row(), du, dv, 0)));
        if (strangeness < least) {
          least = strangeness;
          best = MovedRow.by(row, du, dv, search.leavesOpen());
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

  static double middle(double[] strangeness) {
    double[] sorted = strangeness.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
