package leadlight.cli;

import picocli.CommandLine.Option;

/** Who does it, for the record. */
final class Person {

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Who does it, for the record (default: the user that is logged in).")
  private String name;

  String name() {
    return name == null || name.isBlank() ? System.getProperty("user.name", "unknown") : name;
  }
}
