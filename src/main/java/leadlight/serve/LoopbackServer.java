package leadlight.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leadlight.model.UserError;

/**
 * Answers requests of pages of ours. No path of a request ever becomes the path of a file: what is
 * sent is made by the {@link Answers}. Several requests are answered at once, so that one that is
 * sent half and left does not hold up the page.
 */
public final class LoopbackServer implements AutoCloseable {

  private static final String LOOPBACK = "127.0.0.1";
  private static final byte[] LOOPBACK_BYTES = {127, 0, 0, 1};
  private static final int NOT_ALLOWED = 405;
  private static final int AT_ONCE = 8;

  /** A page's own requests are answered within milliseconds; common practice, no source. */
  private static final String SECONDS_A_REQUEST = "5";

  /**
   * An answer may be a photo's scoring on a slow machine; one that is cut off is sent again by the
   * browser, and the photo recorded twice. Common practice, no source.
   */
  private static final String SECONDS_AN_ANSWER = "120";

  private static final String CONNECTIONS = "64";

  /** What answers. Called from several threads at once. */
  public interface Answers {

    /** The most bytes that a page of ours sends to a path; more is cut and so refused. */
    int mostBytes(String path);

    /** Answers what is asked for. */
    Reply get(String path);

    /** Answers what is sent. */
    Reply post(String path, byte[] body);

    /** Called once an answer to something sent was given. */
    default void answered(String path) {}
  }

  private final HttpServer server;
  private final ExecutorService threads;
  private final Guard guard;
  private final Answers answers;

  private LoopbackServer(HttpServer server, Answers answers) {
    this.server = server;
    this.guard = new Guard(LOOPBACK, server.getAddress().getPort());
    this.answers = answers;
    this.threads =
        Executors.newFixedThreadPool(
            AT_ONCE,
            work -> {
              Thread thread = new Thread(work, "page");
              thread.setDaemon(true);
              return thread;
            });
    server.setExecutor(threads);
    server.createContext("/", this::handle);
  }

  /**
   * Starts serving.
   *
   * @param instead what to do where no page can be served; ends the message
   * @throws UserError if the system gives no port
   */
  public static LoopbackServer start(Answers answers, String instead) {
    try {
      InetAddress loopback = InetAddress.getByAddress(LOOPBACK_BYTES);
      boundRequests();
      HttpServer server = HttpServer.create(new InetSocketAddress(loopback, 0), 0);
      LoopbackServer started = new LoopbackServer(server, answers);
      server.start();
      return started;
    } catch (IOException e) {
      throw new UserError(
          "the page cannot be served on this computer (%s); %s".formatted(e.getMessage(), instead));
    }
  }

  /** Half-sent requests are dropped, and so many at once are taken; the JDK reads it once. */
  private static void boundRequests() {
    System.setProperty("sun.net.httpserver.maxReqTime", SECONDS_A_REQUEST);
    System.setProperty("sun.net.httpserver.maxRspTime", SECONDS_AN_ANSWER);
    System.setProperty("jdk.httpserver.maxConnections", CONNECTIONS);
  }

  /** The page's address; whoever knows it can answer. */
  public String address() {
    return guard.address();
  }

  private void handle(HttpExchange exchange) throws IOException {
    Optional<String> path;
    try (exchange) {
      Guard.protect(exchange.getResponseHeaders());
      path = guard.admitted(exchange);
      send(exchange, path.isEmpty() ? Reply.missing() : reply(exchange, path.get()));
    }
    if (path.isPresent() && exchange.getRequestMethod().equals("POST")) {
      answers.answered(path.get());
    }
  }

  private Reply reply(HttpExchange exchange, String path) throws IOException {
    try {
      return switch (exchange.getRequestMethod()) {
        case "GET" -> answers.get(path);
        case "POST" ->
            answers.post(path, exchange.getRequestBody().readNBytes(answers.mostBytes(path)));
        default -> Reply.text(NOT_ALLOWED, "not so");
      };
    } catch (UserError e) {
      return Reply.text(Reply.TROUBLE, e.getMessage());
    }
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    reply
        .policy()
        .ifPresent(own -> exchange.getResponseHeaders().set("Content-Security-Policy", own));
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
    threads.shutdownNow();
  }
}
