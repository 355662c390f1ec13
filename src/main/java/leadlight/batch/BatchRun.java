package leadlight.batch;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leadlight.batch.list.JobPhoto;
import leadlight.pipeline.InOrder;
import leadlight.record.JobRecord;
import leadlight.record.scoring.OpenRun;
import leadlight.record.scoring.RunStart;

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
  public Outcome score(JobPhoto photo) {
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
}
