package leadlight.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where the record lies. */
final class RecordOption {

  @Option(
      names = "--record",
      paramLabel = "DIR",
      defaultValue = "reports/record",
      description = "Folder of the record (default: ${DEFAULT-VALUE}).")
  private Path folder;

  Path folder() {
    return folder;
  }
}
