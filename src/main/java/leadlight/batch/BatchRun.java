package leadlight.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leadlight.batch.list.JobPhoto;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.JobRecord;
import leadlight.record.scoring.OpenRun;
import leadlight.record.scoring.RunStart;
import leadlight.report.ReportWriter;

/**
 * A run over photos, with a folder of its own. One that was broken off, in whatever way, is gone on
 * with by the next on the same source; a photo whose equal scoring is in the record is not scored
 * again. Memory does not grow with the number of photos but for their list.
 */
public final class BatchRun implements AutoCloseable {

  private final JobRecord record;
  private final RunSetup setup;
  private final RunFolder folder;
  private final long id;
  private final boolean resumed;
  private final PhotoWork work;
  private volatile boolean stopped;

  private BatchRun(JobRecord record, RunSetup setup, RunFolder folder, long id, boolean resumed) {
    this.record = record;
    this.setup = setup;
    this.folder = folder;
    this.id = id;
    this.resumed = resumed;
    this.work = new PhotoWork(setup, record, folder, id);
  }

  /**
   * Begins a run, or goes on with one on this source that was broken off.
   *
   * @param source what is worked on and how, in words: equal words mean the same run
   * @param out the folder that the run's own folder is made in
   * @throws leadlight.model.UserError if the folder or the record cannot be written
   */
  public static BatchRun open(String source, Path out, JobRecord record, RunSetup setup) {
    for (OpenRun open : record.unfinishedRuns(source)) {
      Optional<RunFolder> folder =
          open.folder().startsWith(out.toAbsolutePath())
              ? RunFolder.resume(open.folder())
              : Optional.empty();
      if (folder.isPresent()) {
        return new BatchRun(record, setup, folder.get(), open.id(), true).remembering();
      }
    }
    ZonedDateTime now = ZonedDateTime.now(setup.clock());
    RunFolder folder = RunFolder.create(out.toAbsolutePath(), now);
    long id =
        record.startRun(
            new RunStart(
                folder.folder(), source, setup.person(), now, setup.context().toolVersion()));
    return new BatchRun(record, setup, folder, id, false);
  }

  private BatchRun remembering() {
    work.remember();
    return this;
  }

  /** The run's number in the record. */
  public long id() {
    return id;
  }

  /** The run's own folder. */
  public Path folder() {
    return folder.folder();
  }

  /** True if a broken-off run is gone on with. */
  public boolean resumed() {
    return resumed;
  }

  /**
   * Works on the photos; {@code took} hears of each, in order, on this thread.
   *
   * @throws leadlight.model.UserError if results or record cannot be written: the run is broken
   *     off, and what it has done stays done
   */
  public void score(List<JobPhoto> photos, Consumer<Outcome> took) {
    InOrder.each(
        photos,
        setup.threads(),
        photo -> stopped ? Optional.<Supplier<Outcome>>empty() : Optional.of(work.begin(photo)),
        finish -> finish.ifPresent(last -> took.accept(last.get())));
  }

  /** Makes ready, so that the first photo takes no longer than those after it. */
  void warmUp() {
    new WarmUp(setup).into(folder.corner());
  }

  /** Works on one photo. */
  Outcome score(JobPhoto photo) {
    return work.begin(photo).get();
  }

  /** Lets {@link #score} end after the photos that are being worked on. */
  public void stop() {
    stopped = true;
  }

  /** True if {@link #stop} was called. */
  public boolean stopped() {
    return stopped;
  }

  /** Marks the run as complete: the next on this source is a new one. */
  public void end() {
    record.endRun(id, ZonedDateTime.now(setup.clock()));
  }

  @Override
  public void close() {
    folder.close();
  }

  /**
   * Scores a photo that the program carries, and leaves the results to be thrown away: Java loads
   * and compiles what a photo needs the first times it is done, which takes a second.
   */
  private static final class WarmUp {

    private static final String PHOTO = "base-station-video-good.jpg";
    private static final RowSpec ROW =
        RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    private static final int TIMES = 3;

    private final RunSetup setup;

    WarmUp(RunSetup setup) {
      this.setup = setup;
    }

    /**
     * Does it.
     *
     * @param corner a folder for nothing else; made
     */
    void into(Path corner) {
      Settings settings =
          new Settings(ROW, 2, setup.limits().id(), Optional.empty(), setup.opinions());
      PhotoScorer scorer = new PhotoScorer(settings, setup.limits());
      ReportWriter writer = new ReportWriter(setup.context(), setup.page());
      try (InputStream in = WarmUp.class.getResourceAsStream(PHOTO)) {
        Files.createDirectories(corner);
        Path file = corner.resolve(PHOTO);
        Files.copy(in, file);
        for (int i = 0; i < TIMES; i++) {
          try (Photo photo = new PhotoReader().read(file)) {
            writer.write(scorer.score(photo), photo.frame(), corner);
          }
        }
      } catch (IOException | UserError e) {
        // It can do without; where nothing can be written, the first photo will say so.
      }
    }
  }
}
