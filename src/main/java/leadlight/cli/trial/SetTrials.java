package leadlight.cli.trial;

import java.nio.file.Path;
import java.util.List;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;

/** Trials on sets of photos of one row. */
final class SetTrials {

  private SetTrials() {}

  /** The table of a folder of such sets. */
  static List<String> lines(String kind, Path folder, AcceptanceSet limits, int threads) {
    return switch (kind) {
      case "placed" -> PlacedTrial.lines(folder, limits, threads);
      case "same-row" -> SameRowTrial.lines(folder, limits, threads);
      case "burst" -> BurstTrial.lines(folder, limits, threads);
      case "nudge" -> NudgeTrial.lines(folder, threads);
      default -> throw new UserError("--sets must be nudge, placed, same-row or burst, is " + kind);
    };
  }
}
