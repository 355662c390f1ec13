package leadlight.cli.option;

import leadlight.grade.limits.AcceptanceSet;
import picocli.CommandLine.Option;

/** The limits, for commands that decide nothing by them. */
public final class Limits {

  @Option(
      names = "--limits",
      paramLabel = "SET|FILE",
      defaultValue = AcceptanceSet.DEFAULT_ID,
      description =
          "Workmanship limits: a built-in set or a .json file (default: ${DEFAULT-VALUE}).")
  private String set;

  public AcceptanceSet load() {
    return AcceptanceSet.load(set);
  }

  /** The same with a guard band of so many percent. */
  AcceptanceSet load(String percent) {
    return AcceptanceSet.load(set + "@" + percent);
  }
}
