package leadlight.record;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.book.RowReader;
import leadlight.record.book.RunBook;
import leadlight.record.book.SaidBook;
import leadlight.record.book.ScoringReader;
import leadlight.record.book.ScoringWriter;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.OpenRun;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Subject;

/**
 * The record in a folder or on a server. Each change is whole and on the disk when its method
 * returns, or was never made. Several threads and programs may use it: they wait for each other, up
 * to a minute. Every method throws {@link UserError} if the record cannot be read or written.
 */
public final class JobRecord extends WholeRecord {

  private JobRecord(Database database) {
    super(database);
  }

  /** Opens the record of a folder; makes both if they are not there. */
  public static JobRecord open(Path folder) {
    return new JobRecord(counted(Database.open(folder)));
  }

  /** Opens a record; makes it if it is not there. */
  public static JobRecord open(RecordPlace place) {
    return new JobRecord(counted(Database.open(place)));
  }

  /**
   * One scoring.
   *
   * @throws UserError if there is none of that number
   */
  public Scoring scoring(long id) {
    return database
        .read(handle -> new ScoringReader(handle).find(id))
        .orElseThrow(
            () ->
                new UserError(
                    "the record has no scoring " + id + "; \"leadlight record\" lists them"));
  }

  /** An equal scoring, the last if there are several. */
  public Optional<Scoring> find(Subject subject, String fileName, String sha256, Method method) {
    return database.read(
        handle -> new ScoringReader(handle).find(subject, fileName, sha256, method));
  }

  /** Where the results of all scorings of a photo lie: their JSON reports. */
  public List<Path> resultsOf(String sha256) {
    return database.read(handle -> new ScoringReader(handle).resultsOf(sha256));
  }

  /** The scorings that are meant, oldest first. */
  public List<Scoring> scorings(Search search) {
    return database.read(
        handle -> {
          List<Scoring> found = new ArrayList<>();
          new ScoringReader(handle).each(search, found::add);
          return found;
        });
  }

  /** Takes the scorings that are meant one by one, oldest first; must not call the record. */
  public void each(Search search, Consumer<Scoring> take) {
    database.stream(
        handle -> {
          new ScoringReader(handle).each(search, take);
          return null;
        });
  }

  /** The row and the joints of a scoring. */
  public RecordedRow row(long scoring) {
    return database.read(handle -> new RowReader(handle, scoring).read());
  }

  /** The verdict of a scoring as it counts: the bench over a named person over the tool. */
  public Verdict verdict(Scoring scoring) {
    return database.read(
        handle ->
            SaidBook.isAnything(handle, scoring.id())
                ? new RowReader(handle, scoring.id()).read().verdict()
                : scoring.verdict());
  }

  /** Where the results of a scoring lie: its JSON report. */
  public Path results(long scoring) {
    return database.read(handle -> new ScoringReader(handle).results(scoring));
  }

  /** Begins a run. */
  public long startRun(RunStart start) {
    return database.write(handle -> new RunBook(handle).start(start));
  }

  /** Runs on a source that did not come to their end, the latest first. */
  public List<OpenRun> unfinishedRuns(String source) {
    return database.read(handle -> new RunBook(handle).unfinished(source));
  }

  /** Ends a run. */
  public void endRun(long run, ZonedDateTime at) {
    database.change(handle -> new RunBook(handle).end(run, at));
  }

  /**
   * Adds a scoring and what became of its photo in a run.
   *
   * @return number of the scoring; an equal one that is there already is taken unless {@link
   *     NewScoring#again()}
   */
  public long add(long run, NewScoring scoring) {
    return database.write(
        handle -> {
          long id = new ScoringWriter(handle).write(scoring, Optional.of(run));
          RunBook book = new RunBook(handle);
          book.put(run, book.of(scoring, id, run));
          return id;
        });
  }

  /** Sets what became of a photo of a run that was not scored by it. */
  public void put(long run, RunPhoto photo) {
    database.change(handle -> new RunBook(handle).put(run, photo));
  }

  /** Takes what became of each photo of a run, by path; must not call the record. */
  public void eachPhoto(long run, Consumer<RunPhoto> take) {
    database.stream(
        handle -> {
          new RunBook(handle).each(run, take);
          return null;
        });
  }

  /**
   * Adds a person's opinion of a joint, beside the tool's.
   *
   * @throws UserError if there is no such joint
   */
  public void overrule(long scoring, int pin, Overrule overrule) {
    database.change(handle -> new JointBook(handle, scoring, pin).add(overrule));
  }

  /**
   * Adds what the bench said of a joint.
   *
   * @throws UserError if there is no such joint
   */
  public void bench(long scoring, int pin, BenchResult result) {
    database.change(handle -> new JointBook(handle, scoring, pin).add(result));
  }

  /**
   * Takes back the last opinion of a joint that stands; it is kept as taken back.
   *
   * @throws UserError if none stands
   */
  public void takeBackOverrule(long scoring, int pin, Withdrawal why) {
    database.change(handle -> new JointBook(handle, scoring, pin).takeBackOverrule(why));
  }

  /**
   * Takes back the last bench result of a joint that stands, of any test; it is kept as taken back.
   *
   * @throws UserError if none stands
   */
  public void takeBackBench(long scoring, int pin, Withdrawal why) {
    takeBackBench(scoring, pin, EnumSet.allOf(BenchTest.class), why);
  }

  /** The same of the last result of one test. */
  public void takeBackBench(long scoring, int pin, BenchTest test, Withdrawal why) {
    takeBackBench(scoring, pin, EnumSet.of(test), why);
  }

  private void takeBackBench(long scoring, int pin, Set<BenchTest> tests, Withdrawal why) {
    database.change(handle -> new JointBook(handle, scoring, pin).takeBackBench(tests, why));
  }

  /**
   * That something is taken back.
   *
   * @param reason why; may be empty
   * @param person who
   * @param at when
   */
  public record Withdrawal(String reason, String person, ZonedDateTime at) {}

  /**
   * Adds a scoring outside of any run.
   *
   * @return its number
   */
  public long add(NewScoring scoring) {
    return database.write(handle -> new ScoringWriter(handle).write(scoring, Optional.empty()));
  }

  /** Adds to a board's life; job and board are made if they are not there. */
  public void add(String job, String board, LifeEvent event) {
    database.change(handle -> new LifeBook(handle).add(job, board, event));
  }

  /** A board's life beside its photos, oldest first. */
  public List<LifeEvent> life(String job, String board) {
    return database.read(handle -> new LifeBook(handle).read(job, board));
  }

  /** The boards of all jobs, by job and board in the order in which they came. */
  public List<BoardName> boards() {
    return database.read(handle -> new LifeBook(handle).boards());
  }

  /**
   * A board of a job.
   *
   * @param job the job's name
   * @param board the board's name
   */
  public record BoardName(String job, String board) {}
}
