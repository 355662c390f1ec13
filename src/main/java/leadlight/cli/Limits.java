package leadlight.cli;

import java.util.Optional;
import leadlight.grade.AcceptanceSet;
import picocli.CommandLine.Option;

/** The limits to judge by. */
final class Limits {

  @Option(
      names = "--limits",
      paramLabel = "SET|FILE",
      defaultValue = AcceptanceSet.DEFAULT_ID,
      description =
          "Workmanship limits: a built-in set or a .json file (default: ${DEFAULT-VALUE}).")
  private String set;

  @Option(
      names = "--guard-band",
      paramLabel = "PERCENT",
      description =
          "How sure it must be that a limit is kept, or passed: up to 99, never less than by the limits (95).")
  private Optional<String> guardBand = Optional.empty();

  AcceptanceSet load() {
    return AcceptanceSet.load(set + guardBand.map(percent -> "@" + percent).orElse(""));
  }
}
