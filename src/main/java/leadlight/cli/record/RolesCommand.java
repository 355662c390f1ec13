package leadlight.cli.record;

import java.util.concurrent.Callable;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.record.engine.SharedMigrations;
import picocli.CommandLine.Command;

/** {@code leadlight record roles}: the rights that benches and QA need on a shared record. */
@Command(
    name = "roles",
    description =
        "Prints the SQL that gives benches and QA the rights they need on a server's record, for its"
            + " owner to run: record roles | psql DATABASE.",
    mixinStandardHelpOptions = true)
public final class RolesCommand implements Callable<Integer> {

  private final Streams streams;

  public RolesCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.out().print(SharedMigrations.text("shared/roles.sql"));
    return ExitStatus.GOOD.code();
  }
}
