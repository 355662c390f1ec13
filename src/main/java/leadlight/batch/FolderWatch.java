package leadlight.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import leadlight.batch.list.Arrivals;
import leadlight.batch.list.Defaults;
import leadlight.batch.list.FolderRule;
import leadlight.batch.list.JobPhoto;
import leadlight.model.UserError;

/**
 * Scores what arrives in a folder, one photo after the other. What waits, waits in the folder, so
 * nothing grows; what could not be dealt with (disk full) is tried again until it can.
 */
public final class FolderWatch {

  private static final long PAUSE_MS = 40;
  private static final long TROUBLE_MS = 2_000;

  /** A large folder takes long to look at; at most this share of the time goes to that. */
  private static final int PAUSE_PER_LOOK = 4;

  private final Path folder;
  private final Defaults defaults;
  private final BatchRun run;
  private final Arrivals arrivals;
  private final CountDownLatch stop = new CountDownLatch(1);
  private String trouble = "";

  /** Watches a folder, into a run. */
  public FolderWatch(Path folder, Defaults defaults, BatchRun run) {
    this.folder = folder;
    this.defaults = defaults;
    this.run = run;
    this.arrivals = new Arrivals(folder);
  }

  /** Makes ready for the first photo; takes a second or two. */
  public void warmUp() {
    run.warmUp();
  }

  /** Lets {@link #watch} end after the photo that is being worked on. */
  public void stop() {
    stop.countDown();
  }

  /**
   * Watches until stopped.
   *
   * @param took hears of each photo
   * @param say hears one line when something is in the way, and when it is no more
   */
  public void watch(Consumer<Outcome> took, Consumer<String> say) {
    long pauseMs = 0;
    while (!stopped(pauseMs)) {
      long began = System.nanoTime();
      try {
        List<Path> photos = arrivals.look(began);
        long looked = System.nanoTime() - began;
        boolean done = score(photos, took, say);
        if (done) {
          say(say, "");
        }
        pauseMs = done ? Math.max(PAUSE_MS, PAUSE_PER_LOOK * looked / 1_000_000) : TROUBLE_MS;
      } catch (IOException e) {
        say(say, folder + " is gone or cannot be read; waiting for it to come back");
        pauseMs = TROUBLE_MS;
      }
    }
  }

  /** False if something was in the way. */
  private boolean score(List<Path> photos, Consumer<Outcome> took, Consumer<String> say) {
    FolderRule rule = new FolderRule(folder, defaults);
    for (int i = 0; i < photos.size(); i++) {
      if (stop.getCount() == 0) {
        return true;
      }
      if (!Files.exists(photos.get(i))) {
        arrivals.putBack(photos.get(i)); // Gone while it waited; it counts when it is back.
        continue;
      }
      JobPhoto photo;
      try {
        photo = rule.of(photos.get(i));
      } catch (UserError e) {
        say.accept(e.getMessage());
        continue;
      }
      try {
        Outcome outcome = run.score(photo);
        if (outcome.message().isPresent() && !Files.exists(photo.photo())) {
          arrivals.putBack(photo.photo());
        } else {
          took.accept(outcome);
        }
      } catch (UserError e) {
        say(say, e.getMessage() + " (trying again)");
        photos.subList(i, photos.size()).forEach(arrivals::putBack);
        return false;
      }
    }
    return true;
  }

  private void say(Consumer<String> say, String now) {
    if (!now.equals(trouble)) {
      say.accept(now.isEmpty() ? "all is well again" : now);
      trouble = now;
    }
  }

  private boolean stopped(long pauseMs) {
    try {
      return stop.await(pauseMs, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }
}
