package leadlight.record;

import java.util.Map;
import java.util.Optional;
import leadlight.record.book.TallyBook;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;

/** The counts of a record that charts are drawn from: as fast for ten million joints as for ten. */
public final class Tallies {

  private final JobRecord record;

  public Tallies(JobRecord record) {
    this.record = record;
  }

  /** Joints or boards by an axis, those that are equal in all counted together. */
  public Map<Tally, Long> read(Unit unit, String scope, Axis axis) {
    return record.database.read(
        handle -> new TallyBook(handle).read(unit, scope, Optional.of(axis)));
  }

  /** Photos of a scope: those whose row was found, and those whose row was not. */
  public Map<Tally, Long> photos(String scope) {
    return record.database.read(
        handle -> new TallyBook(handle).read(Unit.PHOTO, scope, Optional.empty()));
  }
}
