package leadlight.photo;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.function.Supplier;
import leadlight.model.UserError;
import leadlight.photo.limit.PhotoLimits;

/**
 * The time that one photo may take. Work that takes longer is left behind, as native code cannot be
 * stopped within its process: it goes on without anyone waiting, and gives back what it holds when
 * it ends; the other photos go on.
 */
public final class Deadline {

  private final Duration most;

  /** As {@code models/photo/limits.json} has it. */
  public Deadline() {
    this(Duration.ofSeconds((long) PhotoLimits.standard().cost().photoSecondsMax().value()));
  }

  Deadline(Duration most) {
    this.most = most;
  }

  /** Reads a photo that is to stay open; what is done with it then has no deadline. */
  public Photo read(Path file) {
    return within(file, () -> new PhotoReader().read(file));
  }

  /**
   * Reads a photo and does something with it; the photo is closed when that has ended, late or not.
   *
   * @param work must hold on to nothing that others close
   * @throws UserError if the time is over or the file is no fit picture; else what the work throws
   */
  public <T> T reading(Path file, Function<Photo, T> work) {
    return within(
        file,
        () -> {
          try (Photo photo = new PhotoReader().read(file)) {
            return work.apply(photo);
          }
        });
  }

  /**
   * Does the work for a photo.
   *
   * @param work on a thread of its own; what it gives too late is closed if it can be
   * @throws UserError if the time is over; else what the work throws
   */
  public <T> T within(Path file, Supplier<T> work) {
    CompletableFuture<T> done = new CompletableFuture<>();
    Thread thread = new Thread(() -> run(work, done), "photo");
    thread.setDaemon(true);
    thread.start();
    try {
      return done.get(most.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return inTheEnd(file, done);
    } catch (InterruptedException e) {
      done.cancel(false);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw thrown(e.getCause());
    }
  }

  private static <T> void run(Supplier<T> work, CompletableFuture<T> done) {
    try {
      T result = work.get();
      if (!done.complete(result) && result instanceof AutoCloseable held) {
        held.close();
      }
    } catch (Exception | Error e) {
      done.completeExceptionally(e);
    }
  }

  /** It may have ended between the deadline and here; then that counts. */
  private <T> T inTheEnd(Path file, CompletableFuture<T> done) {
    UserError late =
        new UserError(
            file.toString().replaceAll("\\p{Cntrl}", "?")
                + " takes longer than "
                + most.toSeconds()
                + " s and was left; crop the row out, or take a smaller picture");
    if (done.completeExceptionally(late)) {
      throw late;
    }
    try {
      return done.join();
    } catch (CompletionException e) {
      throw thrown(e.getCause());
    }
  }

  private static RuntimeException thrown(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException fault ? fault : new IllegalStateException(cause);
  }
}
