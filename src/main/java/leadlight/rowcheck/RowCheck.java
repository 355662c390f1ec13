package leadlight.rowcheck;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.model.joint.Reading;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.row.PossibleRow;
import leadlight.row.RowSearch;

/**
 * Lets the second reader look at a found row: if most of what lies at its places is unlike any
 * joint, the row is not where it was found. Then the other places, half a pitch aside and the other
 * side of the body are looked at, and the one that shows joints is taken, if there is just one.
 */
public final class RowCheck {

  private final RowEye eye;
  private final Surroundings surroundings;
  private final FirstPin count;
  private final RowLimits limits = RowLimits.builtIn();

  private record Looked(PossibleRow possible, double strangeness) {

    RowOutcome.Found row() {
      return possible.row();
    }

    Looked at(RowOutcome.Found other, double otherStrangeness) {
      return new Looked(new PossibleRow(other, possible.endsShow()), otherStrangeness);
    }
  }

  public RowCheck(RowEye eye, FirstPin count) {
    this.count = count;
    this.eye = eye;
    this.surroundings = new Surroundings(eye);
  }

  /**
   * The row that shows joints: the found one, unless most of what lies there is likelier no joints
   * and another shows them clearly; or why there is none. A row that may stay yields only to one
   * whose body's side is not against all cues: joints seen the wrong way round look like joints,
   * too. On a make of photo that it does not know the reader finds true joints strange, so that
   * there only the strangest rows are doubted.
   *
   * @param unfamiliar chance that the photo is of such a make
   */
  public RowOutcome better(
      Photo photo, RowSearch search, RowOutcome found, List<Reading> readings, double unfamiliar) {
    double strangeness =
        readings.isEmpty()
            ? 1
            : RowEye.middle(readings.stream().mapToDouble(Reading::strangeness).toArray());
    boolean known = unfamiliar < limits.unknownMakeFrom().value();
    if (strangeness < (known ? limits.likeBelow() : limits.strangeIfUnknown()).value()) {
      return found;
    }
    boolean mayStay = strangeness < limits.doubtFrom().value();
    return another(photo, search, mayStay)
        .map(looked -> (RowOutcome) looked.row())
        .orElseGet(() -> mayStay ? found : none(found));
  }

  private static RowOutcome none(RowOutcome doubted) {
    return doubted instanceof RowOutcome.NotFound
        ? doubted
        : new RowOutcome.NotFound(new NoteOfRow.NoJoints(), doubted.considered());
  }

  /**
   * Rows whose body's side is against all cues come last: the row may as well lie a little off
   * along its leads.
   */
  private Optional<Looked> another(Photo photo, RowSearch search, boolean mayStay) {
    List<PossibleRow> possible = search.possible();
    List<Looked> likely = looked(photo, possible, true);
    return theOne(photo, likely)
        .map(looked -> clearer(looked, aside(photo, looked)))
        .or(() -> theOne(photo, searched(photo, likely)))
        .or(() -> mayStay ? Optional.empty() : theOne(photo, looked(photo, possible, false)))
        .filter(looked -> looked.possible().endsShow() || count.endsAtItsEnds(photo, looked.row()));
  }

  private List<Looked> looked(Photo photo, List<PossibleRow> possible, boolean likely) {
    return possible.stream()
        .filter(it -> it.row().confidence() >= limits.search().confidenceFrom() == likely)
        .map(it -> new Looked(it, eye.firstLook(photo, it.row())))
        .toList();
  }

  private Looked clearer(Looked one, Looked nearby) {
    return nearby.strangeness() < limits.jointOfOdd().value() * one.strangeness() ? nearby : one;
  }

  /**
   * The only one that may be meant, if it clearly shows joints; one row counted from two leads is
   * one.
   */
  private Optional<Looked> theOne(Photo photo, List<Looked> rows) {
    List<Looked> like =
        rows.stream()
            .filter(looked -> looked.strangeness() < limits.likeBelow().value())
            .map(looked -> looked.at(count.inStep(photo, looked.row()), looked.strangeness()))
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
        .sorted(Comparator.comparingDouble(Looked::strangeness))
        .limit(limits.search().mostRows())
        .map(looked -> nearby(photo, looked))
        .toList();
  }

  private Looked aside(Photo photo, Looked looked) {
    RowOutcome.Found best = surroundings.aside(photo, looked.row());
    return looked.at(best, eye.strangeness(photo, best));
  }

  private Looked nearby(Photo photo, Looked looked) {
    RowOutcome.Found best = surroundings.leastStrange(photo, looked.row());
    return looked.at(best, eye.strangeness(photo, best));
  }
}
