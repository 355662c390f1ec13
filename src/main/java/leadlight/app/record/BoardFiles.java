package leadlight.app.record;

import java.nio.charset.StandardCharsets;
import leadlight.data.Hash;

/** What files of a board are called. */
public final class BoardFiles {

  private static final int LONGEST = 60;
  private static final int HASH = 8;

  private BoardFiles() {}

  /** JOB--BOARD as one file name that no other job or board has. */
  public static String name(String job, String board) {
    return part(job) + "--" + part(board);
  }

  /**
   * A name whose words single blanks part, with hyphens for them; of any other the hash is added.
   */
  private static String part(String name) {
    String plain = name.replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String cut =
        plain.substring(
            0,
            plain.offsetByCodePoints(
                0, Math.min(LONGEST, plain.codePointCount(0, plain.length()))));
    return name.equals(cut.replace('-', ' '))
        ? cut
        : cut + "~" + Hash.sha256(name.getBytes(StandardCharsets.UTF_8)).substring(0, HASH);
  }
}
