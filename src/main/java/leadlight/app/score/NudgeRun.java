package leadlight.app.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Nudge;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.motion.NudgeReader;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.together.NudgeJoin;

/** Scores the photo at rest and reads the photos of pushed leads against it. */
public final class NudgeRun {

  private static final String PICTURE = ".*\\.(jpe?g|png|tiff?|bmp|webp)";

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
        pictures(path).stream().filter(picture -> !same(picture, rest)).forEach(all::add);
      } else {
        all.add(path);
      }
    }
    if (all.isEmpty()) {
      throw new UserError(given.get(0) + " holds no photos; name photos of pushed leads");
    }
    return all;
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private static List<Path> pictures(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.getFileName().toString().toLowerCase(Locale.ROOT).matches(PICTURE))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UserError(folder + " cannot be read; check its permissions");
    }
  }

  /** Reads all. */
  public Result read(Path restFile, List<Path> pushed) {
    PhotoScorer scorer = new PhotoScorer(settings, limits);
    PhotoScorer.Open open = PhotoScorer.open(restFile, () -> scorer);
    Photo rest = open.photo();
    try {
      ScoredPhoto scored = open.scored();
      if (!(scored.row() instanceof RowOutcome.Found row)) {
        throw new UserError(
            restFile + ": no row was found in the photo at rest; see leadlight score for why");
      }
      NudgeReader reader = new NudgeReader(rest.frame(), row, settings.row());
      List<NudgeReader.Read> reads = new ArrayList<>();
      for (Path file : pushed) {
        try (Photo photo = new Deadline().read(file)) {
          reads.add(reader.read(photo.frame(), photo.info().file(), photo.info().sha256()));
        }
      }
      Nudge nudge = reader.together(reads);
      return new Result(rest, row, scored, NudgeJoin.of(scored, nudge, limits), nudge);
    } catch (RuntimeException | Error e) {
      rest.close();
      throw e;
    }
  }
}
