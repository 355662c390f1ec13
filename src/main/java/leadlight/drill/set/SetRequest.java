package leadlight.drill.set;

import java.util.Set;
import leadlight.drill.pool.Level;
import leadlight.model.FindingKind;
import leadlight.text.Messages;

/**
 * What a set is to be like.
 *
 * @param name for people
 * @param specimens how many
 * @param rows true if a specimen is a whole row
 * @param level how hard
 * @param findings only faults of these kinds; empty for all
 * @param lamps only under these lamps; empty for all
 * @param productClass 1, 2 or 3
 * @param seed the same seed, the same set
 * @param words the language that is spoken in it
 */
public record SetRequest(
    String name,
    int specimens,
    boolean rows,
    Level level,
    Set<FindingKind> findings,
    Set<String> lamps,
    int productClass,
    long seed,
    Messages words) {}
