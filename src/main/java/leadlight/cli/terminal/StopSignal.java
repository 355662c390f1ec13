package leadlight.cli.terminal;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ends a long run in good order when the program is told to stop (Ctrl-C, SIGTERM): asks it to, and
 * gives it some time for what it is at.
 */
public final class StopSignal implements AutoCloseable {

  private static final long PATIENCE_S = 20;

  private final CountDownLatch ended = new CountDownLatch(1);
  private final Thread hook;

  private volatile Runnable ask = () -> {};

  public StopSignal() {
    this.hook =
        new Thread(
            () -> {
              ask.run();
              try {
                ended.await(PATIENCE_S, TimeUnit.SECONDS);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            "stop-signal");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** What to call when the program is told to stop. */
  public void asks(Runnable stop) {
    ask = stop;
  }

  /** What was to end in good order has ended. */
  @Override
  public void close() {
    ended.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is ending already.
    }
  }
}
