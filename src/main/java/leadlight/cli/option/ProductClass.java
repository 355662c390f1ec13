package leadlight.cli.option;

import leadlight.model.UserError;
import picocli.CommandLine.Option;

/** The product class that a person gives. */
public final class ProductClass {

  @Option(
      names = "--class",
      paramLabel = "1|2|3",
      defaultValue = "2",
      description = "Product class, where nothing else states it (default: ${DEFAULT-VALUE}).")
  private int given;

  /**
   * The class.
   *
   * @throws UserError if it is not 1, 2 or 3
   */
  public int number() {
    if (given < 1 || given > 3) {
      throw new UserError("--class must be 1, 2 or 3, is " + given);
    }
    return given;
  }
}
