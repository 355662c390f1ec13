package leadlight.report;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leadlight.model.result.Besides;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.json.CsvReport;
import leadlight.report.json.JsonReport;
import leadlight.report.picture.AnnotatedPicture;
import leadlight.report.picture.LegPhotos;
import leadlight.report.words.ReportContext;
import leadlight.vision.Frame;

/**
 * Writes the results of scored photos: {@code PHOTO.json} (by {@code
 * models/schema/report.schema.json}), {@code PHOTO.csv}, {@code PHOTO.annotated.png} and {@code
 * PHOTO.html}, PHOTO being the photo's name without its ending. The bytes depend on the arguments
 * alone. Safe for threads.
 */
public final class ReportWriter {

  private final ReportContext context;
  private final Page page;

  /** Makes the page to read in a browser, UTF-8, of a scored photo, legs if any, its picture. */
  @FunctionalInterface
  public interface Page {
    byte[] html(ScoredPhoto scored, LegPhotos legs, Frame picture);
  }

  /**
   * Takes what all reports of a run say.
   *
   * @param page makes the page to read in a browser, UTF-8, of a scored photo and its picture
   */
  public ReportWriter(ReportContext context, BiFunction<ScoredPhoto, Frame, byte[]> page) {
    this(context, (scored, legs, picture) -> page.apply(scored, picture));
  }

  /** The same with a page that shows anchor legs too. */
  public ReportWriter(ReportContext context, Page page) {
    this.context = context;
    this.page = page;
  }

  /** What all reports say. */
  public ReportContext context() {
    return context;
  }

  /** Whether a folder holds results of the photo, which would be replaced. */
  public static boolean isIn(Path folder, PhotoInfo photo) {
    return new ResultFiles(folder, photo, "").areThere();
  }

  /** The JSON report, UTF-8. */
  byte[] json(ScoredPhoto scored) {
    return json(scored, Besides.NONE);
  }

  /** The same, with what other photos had to do with it. */
  public byte[] json(ScoredPhoto scored, Besides besides) {
    return JsonReport.bytes(scored, besides, context);
  }

  /**
   * Writes all files of a photo. They appear complete or not at all. Results of the same photo
   * (same SHA-256) are replaced; other files of that name stay, and -2, -3 ... is put behind the
   * name: of same-named photos that are written at once, which one gets it depends on their order.
   *
   * @param picture the upright photo, untouched; stays open
   * @param outDir the folder, made if it does not exist
   * @throws leadlight.model.UserError if the folder cannot be written
   */
  public WrittenReport write(ScoredPhoto scored, Frame picture, Path outDir) {
    return write(scored, Besides.NONE, "", picture, outDir);
  }

  /**
   * Writes all files of a photo anew where its report lies, whatever lies there now.
   *
   * @param report the JSON file
   * @throws leadlight.model.UserError if the folder cannot be written
   */
  public WrittenReport rewrite(ScoredPhoto scored, Frame picture, Path report) {
    return write(
        scored, Besides.NONE, LegPhotos.NONE, picture, new ResultFiles(report, scored.photo()));
  }

  /**
   * The same of a result that other photos had to do with.
   *
   * @param behindName put behind the photo's name, as ".joined"
   */
  public WrittenReport write(
      ScoredPhoto scored, Besides besides, String behindName, Frame picture, Path outDir) {
    return write(
        scored,
        besides,
        LegPhotos.NONE,
        picture,
        new ResultFiles(outDir, scored.photo(), behindName));
  }

  /** A connector: its row, and its anchor legs in photos of their own. */
  public WrittenReport connector(ScoredPhoto scored, LegPhotos legs, Frame picture, Path outDir) {
    return write(
        scored,
        Besides.of(legs.set()),
        legs,
        picture,
        new ResultFiles(outDir, scored.photo(), ".connector"));
  }

  private WrittenReport write(
      ScoredPhoto scored, Besides besides, LegPhotos legs, Frame picture, ResultFiles files) {
    // Picture and page cost the most and need nothing of each other.
    List<byte[]> shown =
        Stream.<Supplier<byte[]>>of(
                () -> AnnotatedPicture.png(scored, picture, legs, context),
                () -> page.html(scored, legs, picture))
            .parallel()
            .map(Supplier::get)
            .toList();
    return files.write(
        json(scored, besides), CsvReport.bytes(scored, legs.set()), shown.get(0), shown.get(1));
  }
}
