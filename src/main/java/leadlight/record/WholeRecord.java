package leadlight.record;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import leadlight.model.UserError;
import leadlight.record.book.ScoringReader;
import leadlight.record.book.TallyBook;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Backup;
import leadlight.record.file.Chain;
import leadlight.record.file.ChainCheck;
import leadlight.record.file.Check;
import leadlight.record.file.Database;
import leadlight.record.file.Dump;
import leadlight.record.file.EntryKind;
import leadlight.record.file.Rewriting;
import leadlight.record.file.Seal;

/**
 * What is done with a record as a whole: proven, copied, moved, how far it goes; results that its
 * chain proves.
 */
public abstract sealed class WholeRecord implements AutoCloseable permits JobRecord {

  private static final int PIPE_BYTES = 1 << 16;

  final Database database;

  WholeRecord(Database database) {
    this.database = database;
  }

  /** The counts of a record that an older Leadlight wrote, or that was read in, are made once. */
  static Database counted(Database database) {
    try {
      if (!database.read(handle -> new TallyBook(handle).isCounted())) {
        database.change(handle -> new TallyBook(handle).countAll());
      }
      return database;
    } catch (RuntimeException e) {
      database.close();
      throw e;
    }
  }

  /** True if a folder holds a record. */
  public static boolean isIn(Path folder) {
    return isIn(new RecordPlace.Folder(folder));
  }

  /** True if a record is there. */
  public static boolean isIn(RecordPlace place) {
    return Database.isThere(place);
  }

  /**
   * Brings a scoring's results up to date with what stands, and proves them anew. Where files or
   * what is recorded are not as they were written, the files are left alone: new ones would hide
   * that somebody changed them, or tell what somebody wrote into the record. Those that are gone,
   * or whose writing was broken off, are written again.
   *
   * @param write writes the results
   * @return what was wrong, a line each; empty if they were written
   */
  public List<String> rewriteResults(long scoring, Runnable write) {
    List<String> altered = database.read(handle -> ChainCheck.altered(handle, scoring));
    if (altered.isEmpty()) {
      database.change(handle -> Rewriting.begin(handle, scoring));
      write.run();
      database.change(
          handle -> {
            new Chain(handle).add(EntryKind.SCORING, scoring);
            Rewriting.end(handle, scoring);
          });
    }
    return altered;
  }

  /** Scorings whose results were being written anew when the program was stopped. */
  public List<Long> brokenOff() {
    return database.read(Rewriting::begun);
  }

  /** Looks whether all is sound; one line per trouble. Reads every photo. */
  public List<String> troubles() {
    return troubles(Optional.empty());
  }

  /** As {@link #troubles()}; also whether this is the record that a seal was printed of. */
  public List<String> troubles(Optional<Seal> seal) {
    return database.read(
        handle -> {
          List<String> troubles = new Check(handle).troubles(seal);
          // What is wrong with the rows is wrong with their counts.
          return troubles.isEmpty() ? new TallyBook(handle).troubles() : troubles;
        });
  }

  /** The last day on which a photo was scored; empty if none ever was. */
  public Optional<LocalDate> lastDay() {
    return database.read(handle -> new ScoringReader(handle).lastDay());
  }

  /** The head of the chain that proves the record. */
  public Seal seal() {
    return database.read(handle -> new Chain(handle).seal());
  }

  /** Writes all rows as lines of JSON, to be read back by {@link #importInto}. */
  public void dump(OutputStream out) throws IOException {
    Dump.of(database, out);
  }

  /**
   * Makes a record anew in a folder from what {@link #dump} wrote.
   *
   * @return its seal, which is that of the record it was written from
   * @throws UserError if the folder holds a record, or the lines are not whole
   */
  public static Seal importInto(Path folder, BufferedReader lines, String name) throws IOException {
    return importInto(new RecordPlace.Folder(folder), lines, name);
  }

  /** The same, in a folder or on a server. */
  public static Seal importInto(RecordPlace place, BufferedReader lines, String name)
      throws IOException {
    if (place instanceof RecordPlace.Folder && Database.isThere(place)) {
      throw Dump.taken(place);
    }
    Seal seal = Dump.into(place, lines, name);
    counted(Database.open(place)).close();
    return seal;
  }

  /**
   * Writes all of this record to another place, which proves it by the same seal. This one stays as
   * it is.
   *
   * @return the seal of both
   * @throws UserError if there is a record already
   */
  public Seal moveTo(RecordPlace place) {
    try (PipedInputStream in = new PipedInputStream(PIPE_BYTES);
        BufferedReader lines = new BufferedReader(new InputStreamReader(in, UTF_8))) {
      PipedOutputStream out = new PipedOutputStream(in);
      CompletableFuture<Void> dumped = CompletableFuture.runAsync(() -> pour(out));
      try {
        Seal seal = importInto(place, lines, "the record");
        dumped.join();
        return seal;
      } catch (UserError e) {
        // What still reads is ended with its pipe, and then has said what ended it.
        lines.close();
        throw whyNotRead(dumped).orElse(e);
      }
    } catch (IOException e) {
      throw new UserError(
          "the record could not be written to %s (%s); see to its disk"
              .formatted(place, e.getMessage()));
    }
  }

  /** What ended the reading; of a pipe that the writer closed, the writer says why. */
  private static Optional<RuntimeException> whyNotRead(CompletableFuture<Void> dumped) {
    try {
      dumped.join();
      return Optional.empty();
    } catch (CompletionException e) {
      return e.getCause() instanceof RuntimeException why && !(why instanceof UncheckedIOException)
          ? Optional.of(why)
          : Optional.empty();
    }
  }

  private void pour(OutputStream out) {
    try (out) {
      dump(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Copies the record into a folder, as one moment of it, while others may write.
   *
   * @throws UserError if the folder holds a record or cannot be written
   */
  public void backup(Path folder) {
    new Backup(folder).of(database);
  }

  @Override
  public void close() {
    database.close();
  }
}
