package leadlight.cli.record;

import java.util.concurrent.Callable;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code leadlight record seal}: the one line that proves the record later. */
@Command(
    name = "seal",
    description =
        "Prints the seal of the record. Keep it elsewhere: \"record verify --seal\" then proves that"
            + " nothing up to it was changed.",
    mixinStandardHelpOptions = true)
public final class SealCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private RecordOption record;

  public SealCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    try (JobRecord open = record.existing()) {
      streams.out().println(open.seal());
    }
    return ExitStatus.GOOD.code();
  }
}
