package leadlight.drill.set;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.data.JsonText;
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.model.UserError;
import leadlight.record.Sitting;

/**
 * A set that can be taken, wholly in memory: nothing is read from the disk while it is served.
 *
 * @param set what is asked and told
 * @param id how the record knows it
 * @param pictures by file name
 */
public record OpenSet(PracticeSet set, Sitting.SetId id, Map<String, byte[]> pictures) {

  /**
   * Reads a set's folder.
   *
   * @throws UserError if it is none, or a picture is not as it was made
   */
  public static OpenSet read(Path folder) {
    Path file = MadeSet.file(folder);
    if (!Files.isRegularFile(file)) {
      throw new UserError(folder + " is no practice set; make one with \"leadlight drill new\"");
    }
    DataFile data = DataFile.at(file);
    PracticeSet set = data.read(PracticeSet.class);
    Map<String, byte[]> pictures = new HashMap<>();
    set.specimens()
        .forEach(specimen -> pictures.put(specimen.picture(), picture(folder, specimen)));
    return new OpenSet(set, id(set, data.sha256(), false), pictures);
  }

  /** A row of the trainee's own, just made. */
  public static OpenSet ofOwnWork(MadeSet made) {
    byte[] text = JsonText.of(made.set()).getBytes(StandardCharsets.UTF_8);
    return new OpenSet(made.set(), id(made.set(), Hash.sha256(text), true), made.pictures());
  }

  private static Sitting.SetId id(PracticeSet set, String key, boolean own) {
    return new Sitting.SetId(key, set.name(), set.specimens().size(), own);
  }

  private static byte[] picture(Path folder, Specimen specimen) {
    Path file = folder.resolve(specimen.picture());
    try {
      byte[] content = Files.readAllBytes(file);
      if (!Hash.sha256(content).equals(specimen.sha256())) {
        throw new UserError(file + " was changed since the practice set was made; make it again");
      }
      return content;
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; make the practice set again");
    }
  }

  /** A specimen by its number, from 1. */
  public Specimen specimen(int number) {
    return set.specimens().get(number - 1);
  }

  public byte[] picture(int number) {
    return pictures.get(specimen(number).picture());
  }
}
