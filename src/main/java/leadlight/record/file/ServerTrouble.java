package leadlight.record.file;

import java.sql.SQLException;
import leadlight.model.UserError;
import leadlight.record.engine.RecordPlace;
import org.flywaydb.core.api.FlywayException;

/** What a server's refusals mean, by their SQLSTATE (PostgreSQL, appendix A). */
final class ServerTrouble {

  /** The server asks for a password, or the address for encryption, that the other lacks. */
  private static final String REFUSED = "08004";

  private ServerTrouble() {}

  /**
   * Whether it may be otherwise in a moment: the connection is gone, or two got in each other's
   * way.
   */
  static boolean passes(Throwable e) {
    String state = state(e);
    return isLost(state) || state.equals("40001") || state.equals("40P01");
  }

  /** Connection exceptions; the server is shut down, has crashed, starts, or ends what is idle. */
  private static boolean isLost(String state) {
    return (state.startsWith("08") && !state.equals(REFUSED))
        || state.equals("57P01")
        || state.equals("57P02")
        || state.equals("57P03")
        || state.equals("57P05");
  }

  static RuntimeException of(RecordPlace.Server server, Exception e) {
    String state = state(e);
    String record = "the record " + server;
    if (isLost(state)) {
      return new UserError(
          record + " does not answer; nothing half-written stays; see to its server, then rerun");
    }
    if (state.startsWith("53") && !state.equals("53300")) {
      return new UserError(
          record + " cannot be written, its server is full; make room there, then rerun");
    }
    return switch (state) {
      case "28000", "28P01" ->
          new UserError(
              record
                  + " lets you not in; name yourself as in postgresql://NAME@HOST/DATABASE, and put"
                  + " the password into ~/.pgpass or PGPASSWORD");
      case REFUSED ->
          new UserError(
              record
                  + " and this program do not agree on how to connect: put the password into"
                  + " ~/.pgpass or PGPASSWORD; with sslmode=require or verify-..., the server must"
                  + " have encryption switched on");
      case "53300" ->
          new UserError(
              record
                  + " has as many connections as it may; end programs that use it, or let its owner"
                  + " allow more, then rerun");
      case "25006" ->
          new UserError(
              record
                  + " takes no writes, as a copy that follows another; name the server it follows");
      case "3D000" ->
          new UserError(record + " has no such database; its owner makes it with createdb");
      case "42501" ->
          new UserError(
              record + " does not let you do this; ask its owner (\"leadlight record roles\")");
      case "55P03" ->
          new UserError(record + " is in use by others for more than a minute; rerun later");
      case "XX001", "XX002" ->
          new UserError(record + " is damaged; its owner restores it from a copy of pg_dump's");
      case "" ->
          e instanceof FlywayException
              ? new UserError(record + " is no record; name another database")
              : new IllegalStateException(e);
      default -> new IllegalStateException(e);
    };
  }

  /** The state of the innermost refusal; empty if the server said nothing. */
  private static String state(Throwable e) {
    String state = "";
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException said && said.getSQLState() != null) {
        state = said.getSQLState();
      }
    }
    return state;
  }
}
