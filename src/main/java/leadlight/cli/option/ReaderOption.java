package leadlight.cli.option;

import leadlight.model.Opinions;
import picocli.CommandLine.Option;

/** Whether the second reader is asked. */
public final class ReaderOption {

  @Option(
      names = "--no-reader",
      description = "Score by measures alone, without the second reader.")
  private boolean none;

  public Opinions opinions() {
    return none ? Opinions.MEASURES : Opinions.BOTH;
  }
}
