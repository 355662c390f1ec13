package leadlight.desk;

import java.util.concurrent.CountDownLatch;
import leadlight.serve.LoopbackServer;
import leadlight.serve.Reply;

/** Serves the bench page to a browser of this computer. */
public final class BenchServer implements AutoCloseable {

  private final LoopbackServer server;
  private final CountDownLatch left = new CountDownLatch(1);

  private BenchServer(BenchSetup setup) {
    this.server =
        LoopbackServer.start(new Answers(setup), "use leadlight score --job and leadlight record");
  }

  /**
   * Starts serving.
   *
   * @throws leadlight.model.UserError if the system gives no port
   */
  public static BenchServer start(BenchSetup setup) {
    return new BenchServer(setup);
  }

  /** The page's address; whoever knows it can work at the bench. */
  public String address() {
    return server.address();
  }

  /** Waits until somebody ends the serving on the page. */
  public void awaitLeave() throws InterruptedException {
    left.await();
  }

  private final class Answers implements LoopbackServer.Answers {

    private final BenchRoutes routes;

    Answers(BenchSetup setup) {
      this.routes = new BenchRoutes(new Bench(setup));
    }

    @Override
    public int mostBytes(String path) {
      return BenchRoutes.mostBytes(path);
    }

    @Override
    public Reply get(String path) {
      return routes.get(path);
    }

    @Override
    public Reply post(String path, byte[] body) {
      return routes.post(path, body);
    }

    @Override
    public void answered(String path) {
      if (path.equals(BenchRoutes.LEAVE)) {
        left.countDown();
      }
    }
  }

  @Override
  public void close() {
    server.close();
  }
}
