package leadlight.record;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import leadlight.record.engine.RecordPlace;
import org.junit.jupiter.api.Assumptions;

/**
 * A PostgreSQL server of the tests' own, in a folder that is gone with them: Debian's package
 * "postgresql", on a free port of the loopback address. The server does not run as root, so that
 * root's tests run it as the package's user. Names are sorted as people do, not by bytes, and the
 * password comes from a password file.
 */
public final class OwnServer implements AutoCloseable {

  public static final String OWNER = "owner";

  /** Not a secret: the server is gone with the tests. */
  private static final String PASSWORD = "of-the-tests";

  private static final String TEMPLATE = "a_record";
  private static final AtomicInteger NUMBER = new AtomicInteger();
  private static final int PATIENCE_S = 60;

  private final Path bin;
  private final Path folder;
  private final int port;
  private final List<String> settings;
  private Process server;

  private OwnServer(Path bin, Path folder, int port, List<String> settings) {
    this.bin = bin;
    this.folder = folder;
    this.port = port;
    this.settings = settings;
  }

  /** One for all tests of this process; the calling test is skipped where there can be none. */
  static OwnServer ofAllTests() {
    return Shared.SERVER.orElseGet(
        () -> {
          if (System.getenv("CI") != null) {
            fail("no PostgreSQL here: .ci/run installs it");
          }
          Assumptions.abort("no PostgreSQL here: install Debian's package postgresql");
          return null;
        });
  }

  private static final class Shared {
    private static final Optional<OwnServer> SERVER = start();

    private static Optional<OwnServer> start() {
      // Kills of processes are survived without; only a machine's own end is not.
      Optional<OwnServer> made = OwnServer.start("-c", "fsync=off");
      made.ifPresent(
          server -> {
            Runtime.getRuntime().addShutdownHook(new Thread(server::close));
            JobRecord.open(server.place(server.create(TEMPLATE, "template1"))).close();
          });
      return made;
    }
  }

  /** A server; empty where the programs are not installed. */
  public static Optional<OwnServer> start(String... settings) {
    return programs().map(bin -> started(bin, List.of(settings)));
  }

  private static Optional<Path> programs() {
    try (Stream<Path> versions = Files.list(Path.of("/usr/lib/postgresql"))) {
      return versions
          .map(version -> version.resolve("bin"))
          .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
          .max(Path::compareTo);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static OwnServer started(Path bin, List<String> settings) {
    try {
      Path folder = Files.createTempDirectory("leadlight-server-");
      Path password = Files.writeString(folder.resolve("password"), PASSWORD + "\n");
      OwnServer server = new OwnServer(bin, folder, freePort(), settings);
      server.giveAway(folder);
      server.giveAway(password);
      server.run(
          "initdb -U %s -A scram-sha-256 --pwfile=%s --no-sync -E UTF8 --locale-provider=icu"
                  .formatted(OWNER, password)
              + " --icu-locale=en --locale=C.UTF-8 -D "
              + server.data());
      Path file = Files.writeString(folder.resolve("pgpass"), "*:*:*:*:" + PASSWORD + "\n");
      file.toFile().setReadable(false, false);
      file.toFile().setReadable(true, true);
      System.setProperty("org.postgresql.pgpassfile", file.toString());
      server.go();
      return server;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private Path data() {
    return folder.resolve("data");
  }

  /** The password file, for other processes: PGPASSFILE. */
  Path passwordFile() {
    return folder.resolve("pgpass");
  }

  private static boolean isRoot() {
    return System.getProperty("user.name").equals("root");
  }

  private void giveAway(Path path) throws IOException {
    if (isRoot()) {
      Files.setOwner(
          path,
          path.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("postgres"));
    }
  }

  private Process begin(List<String> words) throws IOException {
    List<String> command = new ArrayList<>();
    if (isRoot()) {
      command.addAll(
          List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups", "--"));
    }
    command.add(bin.resolve(words.get(0)).toString());
    command.addAll(words.subList(1, words.size()));
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.resolve("log").toFile()))
        .start();
  }

  private void run(String words) throws IOException {
    try {
      Process process = begin(List.of(words.split(" ")));
      if (process.waitFor() != 0) {
        throw new IOException(Files.readString(folder.resolve("log")));
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Starts the server on its folder, once more after {@link #kill}; returns when it answers. */
  public void go() throws IOException {
    List<String> words =
        new ArrayList<>(List.of("postgres", "-D", data().toString(), "-p", "" + port));
    words.addAll(
        List.of("-c", "listen_addresses=127.0.0.1", "-c", "unix_socket_directories=" + folder));
    words.addAll(settings);
    long began = System.nanoTime();
    while (System.nanoTime() - began < TimeUnit.SECONDS.toNanos(PATIENCE_S)) {
      if (server == null || !server.isAlive()) {
        server = begin(words);
      }
      try (Connection connection = connect("postgres")) {
        assert connection.isValid(1);
        return;
      } catch (SQLException e) {
        pause();
      }
    }
    throw new IOException("no answer: " + Files.readString(folder.resolve("log")));
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Kills the server as a power cut would (SIGKILL). */
  public void kill() throws InterruptedException {
    server.destroyForcibly().waitFor();
  }

  Connection connect(String database) throws SQLException {
    return DriverManager.getConnection(
        "jdbc:postgresql://127.0.0.1:%d/%s?user=%s".formatted(port, database, OWNER));
  }

  /** Runs a line as the owner. */
  void execute(String database, String sql) {
    try (Connection connection = connect(database);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private String create(String name, String template) {
    execute(
        "postgres", "CREATE DATABASE %s TEMPLATE %s STRATEGY file_copy".formatted(name, template));
    return name;
  }

  /** A database without anything in it. */
  public RecordPlace.Server empty() {
    return place(create("r" + NUMBER.incrementAndGet(), "template1"));
  }

  /** A database with an empty record. */
  RecordPlace.Server record() {
    return place(create("r" + NUMBER.incrementAndGet(), TEMPLATE));
  }

  private RecordPlace.Server place(String database) {
    return as(OWNER, database);
  }

  RecordPlace.Server as(String user, String database) {
    return (RecordPlace.Server)
        RecordPlace.parse("postgresql://%s@127.0.0.1:%d/%s".formatted(user, port, database));
  }

  @Override
  public void close() {
    server.destroyForcibly();
    try {
      server.waitFor();
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              Files.deleteIfExists(file);
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
              Files.deleteIfExists(dir);
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
