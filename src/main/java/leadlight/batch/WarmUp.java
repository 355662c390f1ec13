package leadlight.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;

/**
 * Scores a photo that the program carries, and leaves the results to be thrown away: Java loads and
 * compiles what a photo needs the first times it is done, which takes a second.
 */
final class WarmUp {

  private static final String PHOTO = "base-station-video-good.jpg";
  private static final RowSpec ROW =
      RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
  private static final int TIMES = 3;

  private final RunSetup setup;

  WarmUp(RunSetup setup) {
    this.setup = setup;
  }

  /**
   * Does it.
   *
   * @param corner a folder for nothing else; made
   */
  void into(Path corner) {
    Settings settings =
        new Settings(ROW, 2, setup.limits().id(), Optional.empty(), setup.opinions());
    PhotoScorer scorer = new PhotoScorer(settings, setup.limits());
    ReportWriter writer = new ReportWriter(setup.context(), setup.page());
    try (InputStream in = WarmUp.class.getResourceAsStream(PHOTO)) {
      Files.createDirectories(corner);
      Path file = corner.resolve(PHOTO);
      Files.copy(in, file);
      for (int i = 0; i < TIMES; i++) {
        try (Photo photo = new PhotoReader().read(file)) {
          writer.write(scorer.score(photo), photo.frame(), corner);
        }
      }
    } catch (IOException | UserError e) {
      // It can do without; where nothing can be written, the first photo will say so.
    }
  }
}
