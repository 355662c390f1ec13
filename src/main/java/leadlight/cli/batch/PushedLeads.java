package leadlight.cli.batch;

import java.nio.file.Path;
import leadlight.app.score.ResultPlace;
import leadlight.cli.option.PageOptions;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.result.Settings;

/** Watches a folder for photos of pushed leads. */
public interface PushedLeads {

  /**
   * What is watched.
   *
   * @param folder where photos arrive
   * @param rest the photo at rest, which may lie there, too
   * @param settings how it is scored
   * @param limits to judge by
   * @param row what was asked for
   * @param pages how pages are to look
   * @param place where the results go
   */
  record Sitting(
      Path folder,
      Path rest,
      Settings settings,
      AcceptanceSet limits,
      RowRequest row,
      PageOptions pages,
      ResultPlace place) {}

  /** Reads each photo as it comes, until stopped or until no lead is left; the exit status. */
  int watch(Sitting sitting);
}
