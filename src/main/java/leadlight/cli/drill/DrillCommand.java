package leadlight.cli.drill;

import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** {@code leadlight drill}: learning to see a bad joint by judging many, blind. */
@Command(
    name = "drill",
    description = {
      "Practice for trainees: judge joints blind and be told at once.",
      "It says what was shown on pictures; it certifies nothing and nobody."
    },
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "new|judge|own|history|class")
public final class DrillCommand implements Runnable {

  public static CommandLine line(Streams streams) {
    return new CommandLine(new DrillCommand())
        .addSubcommand(new DrillNewCommand(streams))
        .addSubcommand(new DrillJudgeCommand(streams))
        .addSubcommand(new DrillOwnCommand(streams))
        .addSubcommand(new DrillHistoryCommand(streams))
        .addSubcommand(new DrillClassCommand(streams))
        .setCaseInsensitiveEnumValuesAllowed(true);
  }

  @Override
  public void run() {
    throw new UserError("say which: drill new, judge, own, history or class");
  }
}
