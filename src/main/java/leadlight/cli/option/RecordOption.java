package leadlight.cli.option;

import java.nio.file.Path;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import picocli.CommandLine.Option;

/** Where the record lies. */
public final class RecordOption {

  @Option(
      names = "--record",
      paramLabel = "DIR",
      defaultValue = "reports/record",
      description = "Folder of the record (default: ${DEFAULT-VALUE}).")
  private Path folder;

  /** The record that is there; nobody who asks for one wants a new, empty one. */
  public JobRecord existing() {
    if (!JobRecord.isIn(folder)) {
      throw new UserError("no record in " + folder + "; name its folder with --record");
    }
    return JobRecord.open(folder);
  }

  public Path folder() {
    return folder;
  }
}
