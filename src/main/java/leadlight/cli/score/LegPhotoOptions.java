package leadlight.cli.score;

import java.nio.file.Path;
import java.util.List;
import leadlight.leg.find.LegRequest;
import leadlight.model.UserError;
import picocli.CommandLine.Option;

/** Photos of a connector's anchor legs beside that of its row. */
final class LegPhotoOptions {

  @Option(
      names = "--legs",
      paramLabel = "FILE",
      split = ",",
      description =
          "Photos of the connector's anchor legs from the solder side: joined with the row into "
              + "PHOTO.connector.json and the rest beside it.")
  private List<Path> solder = List.of();

  @Option(
      names = "--legs-component",
      paramLabel = "FILE",
      split = ",",
      description = "Photos of the anchor legs from the component side, as --legs.")
  private List<Path> component = List.of();

  @Option(
      names = "--towards-leads",
      paramLabel = "above|below|left|right",
      description =
          "Where in the photos of legs the connector's leads are, seen from its legs: tells legs "
              + "apart that look alike turned half round.")
  private LegRequest.LeadsAt leadsAt = LegRequest.LeadsAt.UNKNOWN;

  /**
   * Whether any photo was named.
   *
   * @throws UserError if not, and yet it was said how they lie
   */
  boolean given() {
    boolean given = !solder.isEmpty() || !component.isEmpty();
    if (!given && leadsAt != LegRequest.LeadsAt.UNKNOWN) {
      throw new UserError("--towards-leads goes with --legs or --legs-component");
    }
    return given;
  }

  List<Path> solder() {
    return solder;
  }

  List<Path> component() {
    return component;
  }

  LegRequest.LeadsAt leadsAt() {
    return leadsAt;
  }
}
