package leadlight.cli;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.RowSpec;
import leadlight.model.UserError;
import picocli.CommandLine.Option;

/** Which row to look for: one of a connector, or a plain row given by numbers. */
final class RowOptions {

  private static final int MOST_LEADS = 500;
  private static final double LEAST_PITCH_MM = 0.1;
  private static final double MOST_PITCH_MM = 10;

  @Option(
      names = "--connector",
      paramLabel = "ID|FILE",
      description = "The connector: an id (\"leadlight connector list\") or a .json file.")
  private String connector;

  @Option(
      names = "--row",
      paramLabel = "K",
      description = "Row of a connector that has several, from 1 (default: 1).")
  private Integer row;

  @Option(
      names = "--leads",
      paramLabel = "N",
      description = "Number of leads: of a plain row, or of a connector that leaves it open.")
  private Integer leads;

  @Option(names = "--pitch", paramLabel = "MM", description = "Pitch of a plain row.")
  private Double pitchMm;

  @Option(
      names = "--lead-width",
      paramLabel = "MM",
      description = "Width of a lead of a plain row, if known.")
  private Double leadWidthMm;

  @Option(
      names = "--land-width",
      paramLabel = "MM",
      description = "Width of a land of a plain row, if known.")
  private Double landWidthMm;

  /**
   * The row.
   *
   * @throws UserError if the options make none
   */
  RowSpec spec() {
    if (leads != null && (leads < 3 || leads > MOST_LEADS)) {
      throw new UserError("--leads must be 3 to " + MOST_LEADS + ", is " + leads);
    }
    return connector == null ? plain() : ofConnector();
  }

  private RowSpec ofConnector() {
    if (pitchMm != null || leadWidthMm != null || landWidthMm != null) {
      throw new UserError(
          "--connector brings its own pitch and widths; leave out --pitch, --lead-width and"
              + " --land-width, or leave out --connector");
    }
    Connector found = ConnectorLibrary.builtIn().find(connector);
    int number = row == null ? 1 : row;
    if (number < 1 || number > found.rows().size()) {
      throw new UserError(
          "--row must be 1 to %d for connector %s, is %d"
              .formatted(found.rows().size(), found.id(), number));
    }
    return found.rowSpec(number - 1, leads == null ? OptionalInt.empty() : OptionalInt.of(leads));
  }

  private RowSpec plain() {
    if (leads == null || pitchMm == null) {
      throw new UserError("say which row: --connector ID, or --leads N --pitch MM");
    }
    if (row != null) {
      throw new UserError("--row goes with --connector; a plain row has only one");
    }
    if (!(pitchMm >= LEAST_PITCH_MM && pitchMm <= MOST_PITCH_MM)) {
      throw new UserError(
          "--pitch must be %s to %s mm, is %s".formatted(LEAST_PITCH_MM, MOST_PITCH_MM, pitchMm));
    }
    return RowSpec.plain(
        leads, pitchMm, width("--lead-width", leadWidthMm), width("--land-width", landWidthMm));
  }

  private OptionalDouble width(String option, Double widthMm) {
    if (widthMm == null) {
      return OptionalDouble.empty();
    }
    if (!(widthMm > 0 && widthMm < pitchMm)) {
      throw new UserError(
          "%s must be above 0 and below the pitch of %s mm, is %s"
              .formatted(option, pitchMm, widthMm));
    }
    return OptionalDouble.of(widthMm);
  }
}
