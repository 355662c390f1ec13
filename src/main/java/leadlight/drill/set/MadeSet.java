package leadlight.drill.set;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.model.UserError;

/**
 * A set with its pictures.
 *
 * @param set what is asked and told
 * @param pictures by file name
 */
public record MadeSet(PracticeSet set, Map<String, byte[]> pictures) {

  static final String FILE = "practice-set.json";

  /** What it was called before; read, never written. */
  private static final String EARLIER = "deck.json";

  /** Where a folder has its practice set. */
  static Path file(Path folder) {
    Path earlier = folder.resolve(EARLIER);
    return Files.exists(earlier) ? earlier : folder.resolve(FILE);
  }

  public static String pictureName(int specimen) {
    return "picture-%03d.jpg".formatted(specimen);
  }

  /**
   * Writes the set into a folder that is there; {@code practice-set.json} last, which makes it a
   * set.
   *
   * @throws UserError if the folder holds a set already, or cannot be written
   */
  public void write(Path folder) {
    refuseIfThere(folder);
    pictures.forEach((name, jpeg) -> WholeFile.write(folder.resolve(name), jpeg));
    DataFile.write(folder.resolve(FILE), set);
  }

  /**
   * Says no before the work to a folder that holds a set already.
   *
   * @throws UserError if it does
   */
  public static void refuseIfThere(Path folder) {
    if (Files.exists(file(folder))) {
      throw new UserError(folder + " holds a practice set already; name another folder with --out");
    }
  }
}
