package leadlight.app.score;

import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.LegScorer;
import leadlight.leg.find.LegRequest;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.report.LegsReport;
import leadlight.report.picture.LegsPicture;

/** Judges the anchor legs of a photo and writes PHOTO.legs.json and PHOTO.legs.png. */
public final class LegsFiles {

  private final LegScorer scorer;
  private final int productClass;
  private final Path out;

  public LegsFiles(AcceptanceSet limits, int productClass, Path out) {
    this.scorer = new LegScorer(limits, productClass);
    this.productClass = productClass;
    this.out = out;
  }

  /** The report, and the files that were written. */
  public record Written(LegsReport report, Path json, Path picture) {}

  /**
   * Judges and writes.
   *
   * @throws UserError if the photo cannot be used, or results of another lie there
   */
  public Written write(Path file, LegRequest request) {
    try (Photo photo = new PhotoReader().read(file)) {
      LegsReport report =
          new LegsReport(
              photo.info(), request.side(), productClass, scorer.score(photo.frame(), request));
      String name = stem(file.getFileName().toString());
      Path json = out.resolve(name + ".legs.json");
      if (Files.exists(json) && !DataFile.at(json).text().contains(photo.info().sha256())) {
        throw new UserError(json + " is of another photo; name another folder by --out");
      }
      WholeFile.write(json, report.json());
      Path picture = out.resolve(name + ".legs.png");
      WholeFile.write(picture, LegsPicture.png(photo.frame(), report.legs()));
      return new Written(report, json, picture);
    }
  }

  private static String stem(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
