package leadlight.record.engine;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * The text of a number as SQLite writes it, which the chain hashes. SQLite itself is asked, in
 * memory: its digits are not always the nearest ones, so that no other formatter gives the same.
 */
final class Reals {

  private static final Reals ONE = new Reals();

  private final PreparedStatement asked;

  private Reals() {
    try {
      Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:");
      asked = memory.prepareStatement("SELECT ?");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  static String text(double value) throws SQLException {
    synchronized (ONE) {
      ONE.asked.setDouble(1, value);
      try (ResultSet row = ONE.asked.executeQuery()) {
        row.next();
        return row.getString(1);
      }
    }
  }
}
