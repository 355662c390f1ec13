package leadlight.connector;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.UserError;
import leadlight.model.row.RowSpec;

/**
 * Which row a person asks for: one of a connector, or a plain row given by numbers.
 *
 * @param connector id, or path of a .json file; empty for a plain row
 * @param row row of a connector that has several, from 1
 * @param leads number of leads: of a plain row, or of a connector that leaves it open
 * @param pitchMm pitch of a plain row
 * @param leadWidthMm width of a lead of a plain row, if known
 * @param landWidthMm width of a land of a plain row, if known
 * @param unusualPitch true if a pitch outside the usual range is meant
 * @param pin1Right true if pin 1 of a plain row is the rightmost when the body is held above
 */
public record RowRequest(
    Optional<String> connector,
    OptionalInt row,
    OptionalInt leads,
    OptionalDouble pitchMm,
    OptionalDouble leadWidthMm,
    OptionalDouble landWidthMm,
    boolean unusualPitch,
    boolean pin1Right) {

  private static final int MOST_LEADS = 500;
  private static final double LEAST_PITCH_MM = 0.1;
  private static final double MOST_PITCH_MM = 10;

  /**
   * Pitches of the connectors served are 0.4 to 0.8 mm (the open footprints in {@code
   * models/connectors}), small outline packages reach 1.27; a value outside is rather a slip.
   */
  private static final double LEAST_USUAL_MM = 0.3;

  private static final double MOST_USUAL_MM = 1.3;

  /** Nothing is asked for. */
  public static final RowRequest NONE =
      new RowRequest(
          Optional.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false,
          false);

  /** A connector's first row. */
  public static RowRequest of(String connector) {
    return new RowRequest(
        Optional.of(connector),
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        false);
  }

  /** The same with a number of leads. */
  public RowRequest withLeads(int count) {
    return new RowRequest(
        connector,
        row,
        OptionalInt.of(count),
        pitchMm,
        leadWidthMm,
        landWidthMm,
        unusualPitch,
        pin1Right);
  }

  /** True if nothing is asked for. */
  public boolean isEmpty() {
    return connector.isEmpty() && leads.isEmpty() && pitchMm.isEmpty();
  }

  /**
   * The row.
   *
   * @throws UserError if what is asked for makes none; names the values as options are named
   */
  public RowSpec spec() {
    if (leads.isPresent() && (leads.getAsInt() < 3 || leads.getAsInt() > MOST_LEADS)) {
      throw new UserError("--leads must be 3 to " + MOST_LEADS + ", is " + leads.getAsInt());
    }
    return connector.isPresent() ? ofConnector(connector.get()) : plain();
  }

  private RowSpec ofConnector(String id) {
    if (pitchMm.isPresent() || leadWidthMm.isPresent() || landWidthMm.isPresent()) {
      throw new UserError(
          "--connector brings its own pitch and widths; leave out --pitch, --lead-width and"
              + " --land-width, or leave out --connector");
    }
    if (unusualPitch || pin1Right) {
      throw new UserError("--unusual-pitch and --pin1 go with a plain row; leave out --connector");
    }
    Connector found = ConnectorLibrary.builtIn().find(id);
    int number = row.orElse(1);
    if (number < 1 || number > found.rows().size()) {
      throw new UserError(
          "--row must be 1 to %d for connector %s, is %d"
              .formatted(found.rows().size(), found.id(), number));
    }
    return found.rowSpec(number - 1, leads);
  }

  private RowSpec plain() {
    if (leads.isEmpty() || pitchMm.isEmpty()) {
      throw new UserError("say which row: --connector ID, or --leads N --pitch MM");
    }
    if (row.isPresent()) {
      throw new UserError("--row goes with --connector; a plain row has only one");
    }
    double pitch = pitchMm.getAsDouble();
    if (!(pitch >= LEAST_PITCH_MM && pitch <= MOST_PITCH_MM)) {
      throw new UserError(
          "--pitch must be %s to %s mm, is %s".formatted(LEAST_PITCH_MM, MOST_PITCH_MM, pitch));
    }
    if (!unusualPitch && !(pitch >= LEAST_USUAL_MM && pitch <= MOST_USUAL_MM)) {
      throw new UserError(
          "--pitch %s mm is outside %s to %s mm, where rows of this kind lie; check it, or add"
                  .formatted(pitch, LEAST_USUAL_MM, MOST_USUAL_MM)
              + " --unusual-pitch if it is meant");
    }
    checkWidth("--lead-width", leadWidthMm, pitch);
    checkWidth("--land-width", landWidthMm, pitch);
    RowSpec row = RowSpec.plain(leads.getAsInt(), pitch, leadWidthMm, landWidthMm);
    return pin1Right ? row.reversed() : row;
  }

  private static void checkWidth(String option, OptionalDouble widthMm, double pitchMm) {
    if (widthMm.isPresent() && !(widthMm.getAsDouble() > 0 && widthMm.getAsDouble() < pitchMm)) {
      throw new UserError(
          "%s must be above 0 and below the pitch of %s mm, is %s"
              .formatted(option, pitchMm, widthMm.getAsDouble()));
    }
  }
}
