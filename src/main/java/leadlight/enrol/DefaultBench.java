package leadlight.enrol;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.model.UserError;

/**
 * The bench by which photos are judged where none is named: {@code default.json} in the folder of
 * the benches. Its version in use counts, not the one that was in use when it was set.
 *
 * @param bench its name
 */
public record DefaultBench(@JsonProperty(required = true) String bench) {

  private static final String FILE = "default.json";

  /** Its name, if there is one. */
  public static Optional<String> in(Path benches) {
    Path file = benches.resolve(FILE);
    return Files.exists(file)
        ? Optional.of(DataFile.at(file).read(DefaultBench.class).bench())
        : Optional.empty();
  }

  /**
   * Makes a bench the default.
   *
   * @throws UserError if it was not enrolled
   */
  public static void set(Path benches, String bench) {
    new BenchFolder(benches, bench).inUse();
    DataFile.write(benches.resolve(FILE), new DefaultBench(bench));
  }

  /**
   * Leaves no bench the default.
   *
   * @return whether this one was it
   */
  public static boolean clear(Path benches, String bench) {
    if (!in(benches).equals(Optional.of(bench))) {
      return false;
    }
    try {
      Files.delete(benches.resolve(FILE));
      return true;
    } catch (IOException e) {
      throw new UserError(benches.resolve(FILE) + " cannot be deleted; check its permissions");
    }
  }
}
