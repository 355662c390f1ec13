package leadlight.cli;

import java.util.OptionalDouble;
import leadlight.model.RowSpec;
import leadlight.model.UserError;
import picocli.CommandLine.Option;

/** Which row to look for. */
final class RowOptions {

  private static final int MOST_LEADS = 500;
  private static final double LEAST_PITCH_MM = 0.1;
  private static final double MOST_PITCH_MM = 10;

  @Option(names = "--leads", paramLabel = "N", description = "Number of leads of a plain row.")
  private Integer leads;

  @Option(names = "--pitch", paramLabel = "MM", description = "Pitch of a plain row.")
  private Double pitchMm;

  @Option(names = "--lead-width", paramLabel = "MM", description = "Width of a lead, if known.")
  private Double leadWidthMm;

  @Option(names = "--land-width", paramLabel = "MM", description = "Width of a land, if known.")
  private Double landWidthMm;

  RowSpec spec() {
    if (leads == null || pitchMm == null) {
      throw new UserError("say which row: --connector ID, or --leads N --pitch MM");
    }
    if (leads < 3 || leads > MOST_LEADS) {
      throw new UserError("--leads must be 3 to " + MOST_LEADS + ", is " + leads);
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
