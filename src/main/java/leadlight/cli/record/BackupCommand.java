package leadlight.cli.record;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code leadlight record backup}: a whole copy, also while a batch writes. */
@Command(
    name = "backup",
    description = "Copies the record into a folder of its own, also while it is written to.",
    mixinStandardHelpOptions = true)
public final class BackupCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "DIR", description = "Folder for the copy.")
  private Path folder;

  @Mixin private RecordOption record;

  public BackupCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    try (JobRecord open = record.existing()) {
      open.backup(folder);
    }
    try (JobRecord copy = JobRecord.open(folder)) {
      streams.out().println("copied to " + folder + ", seal " + copy.seal());
    }
    return ExitStatus.GOOD.code();
  }
}
