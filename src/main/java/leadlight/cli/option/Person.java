package leadlight.cli.option;

import picocli.CommandLine.Option;

/** Who does it, for the record. */
public final class Person {

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Who does it, for the record (default: the user that is logged in).")
  private String name;

  public String name() {
    return name == null || name.isBlank() ? System.getProperty("user.name", "unknown") : name;
  }
}
