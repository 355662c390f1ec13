package leadlight.drill;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.model.UserError;

/**
 * A deck with its pictures.
 *
 * @param deck what is asked and told
 * @param pictures by file name
 */
public record MadeDeck(Deck deck, Map<String, byte[]> pictures) {

  static final String FILE = "deck.json";

  static String pictureName(int card) {
    return "card-%03d.jpg".formatted(card);
  }

  /**
   * Writes the deck into a folder that is there; {@code deck.json} last, which makes it a deck.
   *
   * @throws UserError if the folder holds a deck already, or cannot be written
   */
  public void write(Path folder) {
    refuseIfThere(folder);
    pictures.forEach((name, jpeg) -> WholeFile.write(folder.resolve(name), jpeg));
    DataFile.write(folder.resolve(FILE), deck);
  }

  /**
   * Says no before the work to a folder that holds a deck already.
   *
   * @throws UserError if it does
   */
  public static void refuseIfThere(Path folder) {
    if (Files.exists(folder.resolve(FILE))) {
      throw new UserError(folder + " holds a deck already; name another folder with --out");
    }
  }
}
