package leadlight.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import leadlight.model.UserError;
import leadlight.record.DrillRecord;
import leadlight.record.JobRecord;
import leadlight.record.engine.RecordPlace;
import picocli.CommandLine.Option;

/** Where the record lies. */
public final class RecordOption {

  private static final Path USUAL = Path.of("reports/record");

  @Option(
      names = "--record-files",
      paramLabel = "DIR",
      description =
          "Folder for what lies beside the record: kept photos, presets (default: the record's own"
              + " folder; for one on a server reports/record).")
  private Optional<Path> files = Optional.empty();

  @Option(
      names = "--record",
      paramLabel = "DIR|URL",
      defaultValue = "reports/record",
      description =
          "The record: a folder, or postgresql://HOST/DATABASE (default: ${DEFAULT-VALUE}).")
  private String record;

  /** The record that is there; nobody who asks for one wants a new, empty one. */
  public JobRecord existing() {
    known();
    return open();
  }

  /** The record; made if it is not there. */
  public JobRecord open() {
    return JobRecord.open(place());
  }

  /** The trainees' part of the record; made if it is not there. */
  public DrillRecord drill() {
    return DrillRecord.open(place());
  }

  /** The trainees' part of a record that is there. */
  public DrillRecord existingDrill() {
    known();
    return drill();
  }

  private void known() {
    if (!JobRecord.isIn(place())) {
      throw new UserError("no record in " + place() + "; name where it is with --record");
    }
  }

  /** Not before it is asked for: what is wrong with it is then told in our own words. */
  public RecordPlace place() {
    return RecordPlace.parse(record);
  }

  /** Folder of what lies beside the record. */
  public Path folder() {
    return files.orElseGet(
        () -> place() instanceof RecordPlace.Folder folder ? folder.path() : USUAL);
  }
}
