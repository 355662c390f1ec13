package leadlight.cli.record;

import java.util.concurrent.Callable;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Seal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code leadlight record move}: from a folder to a server that several benches share, or back. */
@Command(
    name = "move",
    description =
        "Writes all of the record to another place, a folder or a server, and proves it there. The"
            + " one that it came from stays as it is.",
    mixinStandardHelpOptions = true)
public final class MoveCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "DIR|URL",
      description = "Where to: a folder without record, or postgresql://HOST/DATABASE.")
  private String to;

  @Mixin private RecordOption record;

  public MoveCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    RecordPlace place = RecordPlace.parse("the place to move to", to);
    try (JobRecord open = record.existing()) {
      Seal seal = open.moveTo(place);
      streams.out().println("moved to " + place + ", seal " + seal);
      streams
          .out()
          .println(
              record.place() + " stays as it is; from now on name --record " + to + " everywhere");
    }
    return ExitStatus.GOOD.code();
  }
}
