package leadlight.cli;

import leadlight.model.Opinions;
import picocli.CommandLine.Option;

/** Whether the second reader is asked. */
final class ReaderOption {

  @Option(
      names = "--no-reader",
      description = "Score by measures alone, without the second reader.")
  private boolean none;

  Opinions opinions() {
    return none ? Opinions.MEASURES : Opinions.BOTH;
  }
}
