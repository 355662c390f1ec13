package leadlight.cli.quality;

import java.util.Set;
import java.util.stream.Collectors;
import leadlight.quality.grades.Reading;
import picocli.CommandLine.Option;

/** Which words of a table call something bad, good or neither. */
final class VerdictWords {

  @Option(
      names = "--bad-is",
      paramLabel = "VERDICT",
      defaultValue = "defect",
      split = ",",
      description = "Verdicts that call it bad (default: ${DEFAULT-VALUE}).")
  private Set<String> bad;

  @Option(
      names = "--good-is",
      paramLabel = "VERDICT",
      defaultValue = "acceptable,process-indicator,good",
      split = ",",
      description = "Verdicts that call it good (default: ${DEFAULT-VALUE}).")
  private Set<String> good;

  @Option(
      names = "--open-is",
      paramLabel = "VERDICT",
      defaultValue = "unjudged,limit",
      split = ",",
      description =
          "Verdicts that decide nothing; they are not counted (default: ${DEFAULT-VALUE}).")
  private Set<String> open;

  /**
   * How verdicts are read.
   *
   * @param asGiven true if they are compared as given
   */
  Reading reading(boolean asGiven) {
    return new Reading(stripped(bad), stripped(good), stripped(open), asGiven);
  }

  private static Set<String> stripped(Set<String> words) {
    return words.stream().map(String::strip).collect(Collectors.toSet());
  }
}
