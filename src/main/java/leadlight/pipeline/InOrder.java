package leadlight.pipeline;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Work on a list by several threads whose results are taken one by one, in the order of the list,
 * so that output does not depend on the number of threads. At most {@code threads} results wait.
 */
public final class InOrder {

  private InOrder() {}

  /**
   * Does the work.
   *
   * @param items what to work on
   * @param threads how many at once, at least 1
   * @param work done by any thread; should not throw, as what it throws ends the whole run
   * @param take takes each result, on the calling thread
   */
  public static <A, B> void each(
      List<A> items, int threads, Function<A, B> work, Consumer<B> take) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<B>> waiting = new ArrayDeque<>();
      for (A item : items) {
        if (waiting.size() == threads) {
          take.accept(result(waiting.remove()));
        }
        waiting.add(pool.submit(() -> work.apply(item)));
      }
      while (!waiting.isEmpty()) {
        take.accept(result(waiting.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static <B> B result(Future<B> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
