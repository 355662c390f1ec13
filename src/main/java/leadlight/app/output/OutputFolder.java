package leadlight.app.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.model.UserError;

/** Where results go. */
public final class OutputFolder {

  private OutputFolder() {}

  /**
   * Makes sure that a folder is there, so that a long run does not end in a surprise.
   *
   * @throws UserError if it cannot be made or written
   */
  public static void make(Path folder) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new UserError(folder + " is a file; name a folder for the results");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UserError(folder + " cannot be made; choose a folder that is yours");
    }
    if (!Files.isWritable(folder)) {
      throw new UserError(folder + " cannot be written; choose a folder that is yours");
    }
  }
}
