package leadlight.record.file;

import java.sql.SQLException;
import java.util.Optional;
import leadlight.model.UserError;
import leadlight.record.engine.RecordPlace;
import leadlight.record.engine.SharedMigrations;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfoService;
import org.postgresql.ds.PGSimpleDataSource;

/** How a server is spoken to, and its tables brought up to date. Times are common practice. */
final class SharedServer {

  /** For how long a writer waits for others, and for the server itself. */
  static final long PATIENCE_MS = 60_000;

  static final int CONNECT_S = 10;

  /** Longer than any single answer takes; a dead network is noticed by it. */
  private static final int ANSWER_S = 300;

  private SharedServer() {}

  /** Name and password as PostgreSQL's own programs take them; the driver reads the file. */
  static PGSimpleDataSource source(RecordPlace.Server server) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    // By parts: the name of a database may hold what an address parts by.
    source.setServerNames(new String[] {server.host()});
    source.setPortNumbers(new int[] {server.port()});
    source.setDatabaseName(server.database());
    server.parameters().forEach(parameter -> set(source, parameter.split("=", 2)));
    source.setUser(
        server
            .user()
            .or(() -> Optional.ofNullable(System.getenv("PGUSER")))
            .orElse(System.getProperty("user.name")));
    String password = System.getenv("PGPASSWORD");
    if (password != null) {
      source.setPassword(password);
    }
    source.setApplicationName("Leadlight");
    source.setTcpKeepAlive(true);
    source.setConnectTimeout(CONNECT_S);
    source.setSocketTimeout(ANSWER_S);
    source.setReWriteBatchedInserts(true);
    source.setOptions("-c lock_timeout=" + PATIENCE_MS + " -c synchronous_commit=on");
    return source;
  }

  private static void set(PGSimpleDataSource source, String[] parameter) {
    try {
      source.setProperty(parameter[0], parameter[1]);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  static void migrate(RecordPlace.Server server, PGSimpleDataSource source) {
    Flyway flyway =
        Flyway.configure(SharedServer.class.getClassLoader())
            .dataSource(source)
            .resourceProvider(new SharedMigrations())
            .load();
    MigrationInfoService info = flyway.info();
    if (info.current() != null
        && info.current().getState().isApplied()
        && !info.current().getState().isResolved()) {
      throw new UserError(
          "the record " + server + " was written by a newer Leadlight; use that one");
    }
    // Who may only read or score cannot migrate, and need not.
    if (info.pending().length > 0) {
      flyway.migrate();
    } else {
      flyway.validate();
    }
  }
}
