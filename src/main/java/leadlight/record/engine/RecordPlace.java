package leadlight.record.engine;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

    /** Copies the parameters. */
    public Server {
      parameters = List.copyOf(parameters);
    }

    private static Server of(String text) {
      URI uri;
      try {
        uri = new URI(text);
      } catch (URISyntaxException e) {
        // Not the text itself: it may hold a password.
        throw new UserError("--record is no address; give it as postgresql://HOST/DATABASE");
      }
      String user = uri.getUserInfo();
      List<String> parameters =
          uri.getQuery() == null ? List.of() : Arrays.asList(uri.getQuery().split("&", -1));
      if ((user != null && user.contains(":"))
          || parameters.stream().anyMatch(it -> it.startsWith("password"))) {
        throw new UserError(
            "--record has a password in it, which others can read; leave it out, and put it into"
                + " the file ~/.pgpass or the variable PGPASSWORD");
      }
      String path = uri.getPath() == null ? "" : uri.getPath();
      if (uri.getHost() == null || !path.matches("/[^/]+")) {
        throw new UserError("--record " + text + " is no address; give postgresql://HOST/DATABASE");
      }
      for (String parameter : parameters) {
        if (!PARAMETERS.contains(parameter.split("=", 2)[0]) || !parameter.contains("=")) {
          throw new UserError(
              "--record knows no \"" + parameter + "\"; there are sslmode=... and sslrootcert=...");
        }
      }
      return new Server(
          uri.getHost(),
          uri.getPort() < 0 ? USUAL_PORT : uri.getPort(),
          path.substring(1),
          Optional.ofNullable(user),
          parameters);
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
    if (text.startsWith("postgresql:") || text.startsWith("postgres:")) {
      return Server.of(text);
    }
    if (text.contains("://")) {
      throw new UserError("--record is a folder or postgresql://HOST/DATABASE");
    }
    return new Folder(Path.of(text));
  }
}
