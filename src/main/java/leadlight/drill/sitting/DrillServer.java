package leadlight.drill.sitting;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import leadlight.model.UserError;
import leadlight.serve.LoopbackServer;
import leadlight.serve.Reply;

/**
 * Serves one sitting to a browser of this computer. What it can send are the page and its words,
 * three fixed texts, the set's pictures and answers made of the set and the record.
 */
public final class DrillServer implements AutoCloseable {

  private static final int MOST_BODY = 4096;

  private final LoopbackServer server;
  private final CountDownLatch left = new CountDownLatch(1);

  private DrillServer(Judging judging) {
    this.server = LoopbackServer.start(new Answers(judging), "use --terminal");
  }

  /**
   * Starts serving.
   *
   * @throws UserError if the system gives no port
   */
  public static DrillServer start(Judging judging) {
    return new DrillServer(judging);
  }

  /** The page's address; whoever knows it can answer. */
  public String address() {
    return server.address();
  }

  /** Waits until the trainee leaves the page by its button. */
  public void awaitLeave() throws InterruptedException {
    left.await();
  }

  /** One request after the other: a sitting has one person. */
  private final class Answers implements LoopbackServer.Answers {

    private final Routes routes;

    Answers(Judging judging) {
      this.routes = new Routes(judging);
    }

    @Override
    public int mostBytes(String path) {
      return MOST_BODY;
    }

    @Override
    public synchronized Reply get(String path) {
      return routes.get(path);
    }

    @Override
    public synchronized Reply post(String path, byte[] body) {
      return routes.post(path, new String(body, StandardCharsets.UTF_8));
    }

    @Override
    public void answered(String path) {
      if (path.equals(Routes.LEAVE)) {
        left.countDown();
      }
    }
  }

  @Override
  public void close() {
    server.close();
  }
}
