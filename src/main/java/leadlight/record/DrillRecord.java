package leadlight.record;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;

/**
 * The trainees' part of the record in a folder. An answer is on the disk when {@link #answer}
 * returns. May be used by several threads and programs at once, as {@link JobRecord} may.
 *
 * <p>Every method throws {@link UserError} if the file cannot be read or written.
 */
public final class DrillRecord implements AutoCloseable {

  private final Database database;

  private DrillRecord(Database database) {
    this.database = database;
  }

  /** Opens the record of a folder; makes both if they are not there. */
  public static DrillRecord open(Path folder) {
    return new DrillRecord(Database.open(folder));
  }

  /** Opens a record; makes it if it is not there. */
  public static DrillRecord open(RecordPlace place) {
    return new DrillRecord(Database.open(place));
  }

  /** The person's unfinished sitting at a set, or else a new one. */
  public Sitting sit(String person, Sitting.SetId set, ZonedDateTime at) {
    return database.write(handle -> new DrillBook(handle).sit(person, set, at));
  }

  /** Adds an answer; an earlier one to the same pin no longer counts. */
  public void answer(long sitting, DrillAnswer answer) {
    database.change(handle -> new DrillBook(handle).add(sitting, answer));
  }

  /** Marks a specimen as told; the last one ends the sitting. */
  public void tell(long sitting, int specimen, ZonedDateTime at) {
    database.change(handle -> new DrillBook(handle).tell(sitting, specimen, at));
  }

  /** The answers of a sitting that count, by specimen and pin. */
  public List<DrillAnswer> answers(long sitting) {
    return database.read(handle -> new DrillBook(handle).answers(sitting));
  }

  /** Numbers of the specimens that were told. */
  public Set<Integer> told(long sitting) {
    return database.read(handle -> new DrillBook(handle).told(sitting));
  }

  /** A person's sittings, oldest first. */
  public List<Sitting> sittings(String person) {
    return database.read(handle -> new DrillBook(handle).sittings(person));
  }

  /** Everybody who sat, by name. */
  public List<String> people() {
    return database.read(
        handle ->
            handle.select("SELECT name FROM trainee ORDER BY name").mapTo(String.class).list());
  }

  /**
   * Takes a person and all their sittings and answers out of the record; the place on the disk is
   * overwritten ("PRAGMA secure_delete"); on a server, when it is vacuumed.
   *
   * @return how many sittings are gone
   */
  public int erase(String person) {
    return database.write(handle -> new DrillBook(handle).erase(person));
  }

  @Override
  public void close() {
    database.close();
  }
}
