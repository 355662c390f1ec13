package leadlight.record.file;

import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * Marks a scoring while its results are written anew: files and entry cannot change in one step, so
 * that a program stopped between them leaves files that no entry has, and nobody changed.
 */
public final class Rewriting {

  private Rewriting() {}

  public static void begin(Handle handle, long scoring) {
    handle.execute("INSERT INTO rewriting (scoring_id) VALUES (?) ON CONFLICT DO NOTHING", scoring);
  }

  public static void end(Handle handle, long scoring) {
    handle.execute("DELETE FROM rewriting WHERE scoring_id = ?", scoring);
  }

  public static List<Long> begun(Handle handle) {
    return handle
        .select("SELECT scoring_id FROM rewriting ORDER BY scoring_id")
        .mapTo(Long.class)
        .list();
  }
}
