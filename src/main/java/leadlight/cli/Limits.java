package leadlight.cli;

import leadlight.grade.AcceptanceSet;
import picocli.CommandLine.Option;

/** The limits, for commands that decide nothing by them. */
final class Limits {

  @Option(
      names = "--limits",
      paramLabel = "SET|FILE",
      defaultValue = AcceptanceSet.DEFAULT_ID,
      description =
          "Workmanship limits: a built-in set or a .json file (default: ${DEFAULT-VALUE}).")
  private String set;

  AcceptanceSet load() {
    return AcceptanceSet.load(set);
  }

  /** The same with a guard band of so many percent. */
  AcceptanceSet load(String percent) {
    return AcceptanceSet.load(set + "@" + percent);
  }
}
