package leadlight.batch.list;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import leadlight.data.Hash;

/**
 * A name of a person's choice as one folder name that every common file system takes and that leads
 * nowhere else. Letters and digits of any language, blanks and {@code . _ -} stay; where anything
 * else had to go, a piece of the name's hash keeps two names apart.
 */
public final class FolderName {

  private static final int LONGEST_BYTES = 80;
  private static final int HASH_DIGITS = 8;

  /** Device names that Windows takes in any folder (Microsoft, "Naming Files, Paths"). */
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private FolderName() {}

  public static String of(String name) {
    String safe =
        name.replaceAll("[^\\p{L}\\p{M}\\p{N} ._-]", "_").replaceAll("^[. ]+|[. ]+$", "_");
    while (safe.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
      safe = safe.substring(0, safe.offsetByCodePoints(safe.length(), -1));
    }
    String device = safe.toLowerCase(Locale.ROOT).replaceAll("\\..*", "");
    if (safe.equals(name) && !DEVICES.contains(device)) {
      return safe;
    }
    String hash = Hash.sha256(name.getBytes(StandardCharsets.UTF_8)).substring(0, HASH_DIGITS);
    return safe.strip() + "~" + hash;
  }
}
