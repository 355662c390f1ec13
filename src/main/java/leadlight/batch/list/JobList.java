package leadlight.batch.list;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import leadlight.model.UserError;

/** The photos of a folder or a manifest, each with its job. */
public final class JobList {

  /** Job, board, stage, and a few folders more; deeper is a loop of links. */
  private static final int DEEPEST = 12;

  private JobList() {}

  /**
   * Reads a folder by {@link FolderRule}'s rule, sorted by path, or a manifest in its order.
   *
   * @throws UserError if it cannot be read, names no photo or states no row for one
   */
  public static List<JobPhoto> read(Path source, Defaults defaults) {
    if (Files.isDirectory(source)) {
      return ofFolder(source, defaults);
    }
    if (source.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
      return Manifest.read(source, defaults);
    }
    throw new UserError(
        Files.exists(source)
            ? source + " is no folder and no .csv manifest; name one of these"
            : source + " does not exist; check the path");
  }

  private static List<JobPhoto> ofFolder(Path folder, Defaults defaults) {
    FolderRule rule = new FolderRule(folder, defaults);
    List<JobPhoto> photos = pictures(folder).stream().map(rule::of).toList();
    if (photos.isEmpty()) {
      throw new UserError(folder + " holds no photo; check the path");
    }
    return photos;
  }

  /** The photos below a folder, sorted; links are followed. */
  static List<Path> pictures(Path folder) {
    try {
      return PictureTree.below(folder, DEEPEST);
    } catch (IOException e) {
      throw new UserError(folder + " cannot be read to its end; check the disk and permissions");
    }
  }
}
