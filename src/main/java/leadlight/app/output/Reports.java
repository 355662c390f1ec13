package leadlight.app.output;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.life.StandingPhoto;
import leadlight.model.UserError;
import leadlight.page.PhotoPage;
import leadlight.page.words.PageContext;
import leadlight.reader.SecondReader;
import leadlight.record.JobRecord;
import leadlight.report.ReportWriter;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.text.Messages;

/** What writes the results of scored photos, and brings them up to date. */
public final class Reports {

  private Reports() {}

  /** What every report by these limits says, in a language. */
  public static ReportContext context(AcceptanceSet limits, Messages words) {
    return new ReportContext(Version.number(), SecondReader.version(), stated(limits), words);
  }

  public static StatedLimits stated(AcceptanceSet limits) {
    return new StatedLimits(limits.fileId(), limits.builtIn(), limits.name(), limits.notes());
  }

  /** Writes pages that know the connector of their photo. */
  public static ReportWriter writer(AcceptanceSet limits, PageContext pages) {
    return new ReportWriter(context(limits, pages.words()), new PhotoPage(pages)::withLegs);
  }

  /**
   * Brings the results of a scoring up to date, if its limits are built in and its photo is there.
   *
   * @param folder the record's
   * @param pages what pages by these limits share
   * @return in a line why not, if somebody changed them
   */
  public static Optional<String> refresh(
      JobRecord record, Path folder, long scoring, Function<AcceptanceSet, PageContext> pages) {
    AcceptanceSet limits;
    try {
      limits = AcceptanceSet.load(record.scoring(scoring).method().settings().acceptanceSet());
    } catch (UserError e) {
      // Limits of a file of the user's own: the record counts, the pages stay as they were.
      return Optional.empty();
    }
    return StandingPhoto.refresh(
        record, scoring, limits, new PhotoShelf(folder), writer(limits, pages.apply(limits)));
  }
}
