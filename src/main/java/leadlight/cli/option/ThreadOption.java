package leadlight.cli.option;

import leadlight.model.UserError;
import picocli.CommandLine.Option;

/** How many photos are worked on at once. */
public final class ThreadOption {

  private static final int MOST = 256;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Photos worked on at once; results never depend on it (default: all cores).")
  private Integer count;

  public int count() {
    if (count == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    if (count < 1 || count > MOST) {
      throw new UserError("--threads must be 1 to " + MOST + ", is " + count);
    }
    return count;
  }
}
