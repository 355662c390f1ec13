package leadlight.trial.truth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadlight.model.UserError;

/** Finds the photos of a trial. */
public final class TruthFolder {

  private static final String TRUTH = ".truth.json";
  private static final String NOTE = ".row.json";

  private TruthFolder() {}

  /**
   * The photos of a folder (not of folders within it) that have a truth or a row file, by name of
   * that file.
   *
   * @throws UserError if the folder cannot be read or holds none, or a file is not as it should be
   */
  public static List<TrialPhoto> read(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new UserError(folder + ": not a folder; name the folder of photos and truth files");
    }
    List<TrialPhoto> photos = new ArrayList<>();
    for (Path file : sorted(folder)) {
      String name = file.getFileName().toString();
      if (name.endsWith(TRUTH)) {
        PhotoTruth truth = TruthReader.truth(file);
        photos.add(
            new TrialPhoto(beside(file, truth.photo()), Optional.of(truth), Optional.empty()));
      } else if (name.endsWith(NOTE)) {
        RowNote note = TruthReader.note(file);
        photos.add(new TrialPhoto(beside(file, note.photo()), Optional.empty(), Optional.of(note)));
      }
    }
    if (photos.isEmpty()) {
      throw new UserError(folder + ": no *" + TRUTH + " and no *" + NOTE + " file in it");
    }
    return photos;
  }

  /**
   * The truth files of a folder by name.
   *
   * @throws UserError if it cannot be listed
   */
  static List<Path> truths(Path folder) {
    return sorted(folder).stream().filter(file -> file.toString().endsWith(TRUTH)).toList();
  }

  private static List<Path> sorted(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UserError(folder + ": cannot be listed; check that you may read it");
    }
  }

  private static Path beside(Path file, String photo) {
    Path name = Path.of(photo).getFileName();
    Path path = file.resolveSibling(name == null ? "" : name.toString());
    if (!Files.isRegularFile(path)) {
      throw new UserError(file + ": its photo " + photo + " is not beside it");
    }
    return path;
  }
}
