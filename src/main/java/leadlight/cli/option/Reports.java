package leadlight.cli.option;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import leadlight.cli.terminal.Version;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.life.StandingPhoto;
import leadlight.model.UserError;
import leadlight.page.PhotoPage;
import leadlight.reader.SecondReader;
import leadlight.record.JobRecord;
import leadlight.report.ReportWriter;
import leadlight.report.words.ReportContext;

/** What writes the results of scored photos, and brings them up to date. */
public final class Reports {

  private Reports() {}

  public static ReportContext context(AcceptanceSet limits) {
    return new ReportContext(
        Version.number(), SecondReader.version(), limits.name(), String.join(" ", limits.notes()));
  }

  /** Writes pages that know the connector of their photo, or the one that was asked for. */
  public static ReportWriter writer(AcceptanceSet limits, PageOptions pages, RowRequest row) {
    PhotoPage asked = new PhotoPage(pages.context(limits, row));
    List<String> known = ConnectorLibrary.builtIn().ids();
    Map<String, PhotoPage> made = new ConcurrentHashMap<>();
    return new ReportWriter(
        context(limits),
        (scored, legs, picture) -> {
          String id = scored.settings().row().connectorId();
          PhotoPage page =
              known.contains(id)
                  ? made.computeIfAbsent(
                      id, key -> new PhotoPage(pages.context(limits, RowRequest.of(key))))
                  : asked;
          return page.withLegs(scored, legs, picture);
        });
  }

  /**
   * Brings the results of a scoring up to date, if its limits are built in and its photo is there.
   *
   * @return in a line why not, if somebody changed them
   */
  public static Optional<String> refresh(
      JobRecord record, RecordOption where, long scoring, PageOptions pages) {
    AcceptanceSet limits;
    try {
      limits = AcceptanceSet.load(record.scoring(scoring).method().settings().acceptanceSet());
    } catch (UserError e) {
      return Optional
          .empty(); // Limits of a file of the user's own: the record counts, the pages stay as they
      // were.
    }
    return StandingPhoto.refresh(
        record,
        scoring,
        limits,
        new PhotoShelf(where.folder()),
        writer(limits, pages, RowRequest.NONE));
  }
}
