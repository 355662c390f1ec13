package leadlight.record.engine;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlight.model.UserError;

/** Where a record lies: in a folder of one computer, or on a server that several share. */
public sealed interface RecordPlace {

  /**
   * In a folder, in one SQLite file.
   *
   * @param path the folder
   */
  record Folder(Path path) implements RecordPlace {

    @Override
    public String toString() {
      return path.toString();
    }
  }

  /**
   * In a database of a PostgreSQL server.
   *
   * @param host name or address of the server
   * @param port its port
   * @param database the database's name
   * @param user who asks; if empty as the environment says
   * @param parameters of the connection, as "sslmode=verify-full"
   */
  record Server(
      String host, int port, String database, Optional<String> user, List<String> parameters)
      implements RecordPlace {

    private static final int USUAL_PORT = 5432;

    /** What may stand behind the question mark: nothing that is secret or runs code. */
    private static final Set<String> PARAMETERS = Set.of("sslmode", "sslrootcert");

    /** PostgreSQL's documentation, chapter "SSL support" of its client library. */
    private static final Set<String> SSL_MODES =
        Set.of("disable", "allow", "prefer", "require", "verify-ca", "verify-full");

    /** Copies the parameters. */
    public Server {
      parameters = List.copyOf(parameters);
    }

    private static Server of(String name, String text) {
      URI uri;
      try {
        uri = new URI(text);
      } catch (URISyntaxException e) {
        throw noAddress(name);
      }
      String user = uri.getUserInfo();
      List<String> parameters =
          uri.getQuery() == null ? List.of() : Arrays.asList(uri.getQuery().split("&", -1));
      if ((user != null && user.contains(":"))
          || parameters.stream().anyMatch(it -> it.startsWith("password"))) {
        throw new UserError(
            name
                + " has a password in it, which others can read; leave it out, and put it into"
                + " the file ~/.pgpass or the variable PGPASSWORD");
      }
      String path = uri.getPath() == null ? "" : uri.getPath();
      if (uri.getHost() == null || !path.matches("/[^/]+")) {
        throw noAddress(name);
      }
      parameters.forEach(parameter -> check(name, parameter));
      return new Server(
          uri.getHost(),
          uri.getPort() < 0 ? USUAL_PORT : uri.getPort(),
          path.substring(1),
          Optional.ofNullable(user),
          parameters);
    }

    /** Not the text itself: wherever it is torn, it may hold a password. */
    private static UserError noAddress(String name) {
      return new UserError(name + " is no address; give it as postgresql://HOST/DATABASE");
    }

    /** Its name alone is repeated: the value of another may be secret. */
    private static void check(String name, String parameter) {
      String[] parts = parameter.split("=", 2);
      if (parts.length < 2 || !PARAMETERS.contains(parts[0])) {
        throw new UserError(
            name + " knows no \"" + parts[0] + "\"; there are sslmode=... and sslrootcert=...");
      }
      if (parts[0].equals("sslmode") && !SSL_MODES.contains(parts[1])) {
        throw new UserError(
            name
                + " has an sslmode that is none; take one of "
                + String.join(", ", new TreeSet<>(SSL_MODES)));
      }
    }

    @Override
    public String toString() {
      String whose = user.map(name -> name + "@").orElse("");
      String where = port == USUAL_PORT ? host : host + ":" + port;
      return "postgresql://" + whose + where + "/" + database;
    }
  }

  /**
   * Reads what the user named.
   *
   * @throws UserError if it is an address with a password, or none that can be used
   */
  static RecordPlace parse(String text) {
    return parse("--record", text);
  }

  /** The same, named in another way than by {@code --record}: that name begins what is said. */
  static RecordPlace parse(String name, String text) {
    if (text.startsWith("postgresql:") || text.startsWith("postgres:")) {
      return Server.of(name, text);
    }
    if (text.contains("://")) {
      throw new UserError(name + " is a folder or postgresql://HOST/DATABASE");
    }
    return new Folder(Path.of(text));
  }
}
