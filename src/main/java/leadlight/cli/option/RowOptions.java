package leadlight.cli.option;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.connector.RowRequest;
import leadlight.model.UserError;
import leadlight.model.row.RowSpec;
import picocli.CommandLine.Option;

/** Which row to look for: one of a connector, or a plain row given by numbers. */
public final class RowOptions {

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

  @Option(
      names = "--unusual-pitch",
      description = "The pitch is meant, though it lies outside 0.3 to 1.3 mm.")
  private boolean unusualPitch;

  @Option(
      names = "--pin1",
      paramLabel = "left|right",
      description =
          "Where pin 1 of a plain row is when the body is held above the leads (default: left).")
  private Pin1 pin1 = Pin1.LEFT;

  /** Ends of a row whose body is held above it. */
  private enum Pin1 {
    LEFT,
    RIGHT
  }

  /**
   * The row.
   *
   * @throws UserError if the options make none
   */
  public RowSpec spec() {
    return request().spec();
  }

  /** What is asked for, not yet looked at. */
  public RowRequest request() {
    return new RowRequest(
        Optional.ofNullable(connector),
        row == null ? OptionalInt.empty() : OptionalInt.of(row),
        leads == null ? OptionalInt.empty() : OptionalInt.of(leads),
        number(pitchMm),
        number(leadWidthMm),
        number(landWidthMm),
        unusualPitch,
        pin1 == Pin1.RIGHT);
  }

  private static OptionalDouble number(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
