package leadlight.drill;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leadlight.model.UserError;

/**
 * Serves one taking of a deck to a browser of this computer: on the loopback address, at a port
 * that the system chooses, under an address with a token. What it can send are four fixed texts,
 * the deck's pictures and answers made of the deck and the record; no path of a request ever
 * becomes the path of a file.
 */
public final class DrillServer implements AutoCloseable {

  private static final String LOOPBACK = "127.0.0.1";
  private static final byte[] LOOPBACK_BYTES = {127, 0, 0, 1};
  private static final int MOST_BODY = 4096;

  /** A page's own requests are answered within milliseconds; common practice, no source. */
  private static final String SECONDS_A_REQUEST = "5";

  private static final String CONNECTIONS = "64";
  private static final int WORKERS = 4;
  private static final int NOT_FOUND = 404;
  private static final int NOT_ALLOWED = 405;

  private final HttpServer server;
  private final Guard guard;
  private final Routes routes;
  private final ExecutorService workers = Executors.newFixedThreadPool(WORKERS);
  private final CountDownLatch left = new CountDownLatch(1);

  private DrillServer(HttpServer server, Taking taking) {
    this.server = server;
    this.guard = new Guard(LOOPBACK, server.getAddress().getPort());
    this.routes = new Routes(taking);
    server.createContext("/", this::handle);
  }

  /**
   * Starts serving.
   *
   * @throws UserError if the system gives no port
   */
  public static DrillServer start(Taking taking) {
    try {
      InetAddress loopback = InetAddress.getByAddress(LOOPBACK_BYTES);
      boundRequests();
      HttpServer server = HttpServer.create(new InetSocketAddress(loopback, 0), 0);
      DrillServer started = new DrillServer(server, taking);
      server.setExecutor(started.workers);
      server.start();
      return started;
    } catch (IOException e) {
      throw new UserError(
          "the page cannot be served on this computer (%s); use --terminal"
              .formatted(e.getMessage()));
    }
  }

  /** Half-sent requests are dropped, and so many at once are taken; the JDK reads it once. */
  private static void boundRequests() {
    System.setProperty("sun.net.httpserver.maxReqTime", SECONDS_A_REQUEST);
    System.setProperty("sun.net.httpserver.maxRspTime", SECONDS_A_REQUEST);
    System.setProperty("jdk.httpserver.maxConnections", CONNECTIONS);
  }

  /** The page's address; whoever knows it can answer. */
  public String address() {
    return guard.address();
  }

  /** Waits until the trainee leaves the page by its button. */
  public void awaitLeave() throws InterruptedException {
    left.await();
  }

  private void handle(HttpExchange exchange) throws IOException {
    Optional<String> path;
    try (exchange) {
      Guard.protect(exchange.getResponseHeaders());
      path = guard.admitted(exchange);
      send(
          exchange,
          path.isEmpty() ? Routes.text(NOT_FOUND, "not here") : reply(exchange, path.get()));
    }
    if (path.filter(Routes.LEAVE::equals).isPresent()
        && exchange.getRequestMethod().equals("POST")) {
      left.countDown();
    }
  }

  private Routes.Reply reply(HttpExchange exchange, String path) throws IOException {
    try {
      return switch (exchange.getRequestMethod()) {
        case "GET" -> routes.get(path);
        case "POST" -> routes.post(path, body(exchange));
        default -> Routes.text(NOT_ALLOWED, "not so");
      };
    } catch (UserError e) {
      return Routes.text(Routes.TROUBLE, e.getMessage());
    }
  }

  /** The first bytes of what was sent; more than any page of ours sends is cut and so refused. */
  private static String body(HttpExchange exchange) throws IOException {
    return new String(exchange.getRequestBody().readNBytes(MOST_BODY), StandardCharsets.UTF_8);
  }

  private static void send(HttpExchange exchange, Routes.Reply reply) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", reply.type());
    exchange.sendResponseHeaders(
        reply.status(), reply.content().length == 0 ? -1 : reply.content().length);
    if (reply.content().length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(reply.content());
      }
    }
  }

  @Override
  public void close() {
    server.stop(1);
    workers.shutdownNow();
  }
}
