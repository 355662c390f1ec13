package leadlight.app.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Nudge;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoFiles;

/** Scores the photo at rest and reads the photos of pushed leads against it. */
public final class NudgeRun {

  private final Settings settings;
  private final AcceptanceSet limits;

  public NudgeRun(Settings settings, AcceptanceSet limits) {
    this.settings = settings;
    this.limits = limits;
  }

  /**
   * A read nudge; closes the photo at rest.
   *
   * @param alone the photo at rest by itself
   * @param scored the same, the nudge joined
   */
  public record Result(
      Photo rest, RowOutcome.Found row, ScoredPhoto alone, ScoredPhoto scored, Nudge nudge)
      implements AutoCloseable {
    @Override
    public void close() {
      rest.close();
    }
  }

  /**
   * Photos, the pictures of a folder in the order of their names; the photo at rest may lie among
   * them.
   */
  public static List<Path> pushed(Path rest, List<Path> given) {
    List<Path> all = new ArrayList<>();
    for (Path path : given) {
      if (Files.isDirectory(path)) {
        PhotoFiles.in(path).stream().filter(picture -> !same(picture, rest)).forEach(all::add);
      } else {
        all.add(path);
      }
    }
    if (all.isEmpty()) {
      throw new UserError(given.get(0) + " holds no photos; name photos of pushed leads");
    }
    return all;
  }

  /** Whether two names lead to one file; what is not there is no other's. */
  public static boolean same(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }

  /** Reads all. */
  public Result read(Path restFile, List<Path> pushed) {
    NudgeSitting sitting = NudgeSitting.at(restFile, settings, limits);
    try {
      pushed.forEach(sitting::add);
      return sitting.result();
    } catch (RuntimeException | Error e) {
      sitting.close();
      throw e;
    }
  }
}
