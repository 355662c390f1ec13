package leadlight.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leadlight.model.UserError;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** The entry point. */
@Command(
    name = "leadlight",
    description = "Scores the solder joints of a fine-pitch connector row from a photo.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {"", "LEADLIGHT COMMAND --help tells more. It never certifies a board."})
public final class Main {

  /** More than two of the longest paths; common practice, no source. */
  private static final int LONGEST_LINE = 8192;

  private Main() {}

  /** Runs a command and leaves with its exit status. */
  public static void main(String[] args) {
    System.exit(
        run(new Streams(System.in, System.out, System.err, System.console() != null), args));
  }

  /** Runs a command as in a pipe (no progress) and gives its exit status. */
  public static int run(InputStream in, PrintStream out, PrintStream err, String... args) {
    return run(new Streams(in, out, err, false), args);
  }

  private static int run(Streams streams, String... args) {
    // What is written is the same on every machine; words for people come from the message files.
    Locale.setDefault(Locale.ROOT);
    int status = execute(streams, args);
    if (streams.out().checkError()) {
      streams
          .err()
          .println("leadlight: the output cannot be written, its disk is full or it is closed");
      return ExitStatus.UNUSABLE.code();
    }
    return status;
  }

  private static int execute(Streams streams, String... given) {
    String[] args = HelpWords.of(given);
    PrintWriter out = new PrintWriter(streams.out(), true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(streams.err(), true, StandardCharsets.UTF_8);
    CommandLine command = new CommandLine(new Main());
    commands(streams, args).forEach((name, made) -> command.addSubcommand(name, made.get()));
    command
        .setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Double.class, new Numbers())
        .registerConverter(double.class, new Numbers())
        .setParameterExceptionHandler((e, arguments) -> usage(e))
        .setExecutionExceptionHandler((e, ran, parsed) -> failed(e, streams));
    try {
      return command.execute(args);
    } catch (Error e) {
      // What the machine refuses, as memory or a library: no stack trace on the terminal either.
      return failed(e, streams);
    }
  }

  /** The command that is asked for alone: to read what all have to offer takes a tenth second. */
  private static Map<String, Supplier<Object>> commands(Streams streams, String... args) {
    Map<String, Supplier<Object>> all = new LinkedHashMap<>();
    all.put("bench", () -> new BenchCommand(streams));
    all.put("score", () -> withStatuses(new ScoreCommand(streams)));
    all.put("nudge", () -> withStatuses(new NudgeCommand(streams)));
    all.put("batch", () -> withStatuses(new BatchCommand(streams)));
    all.put("enrol", () -> new EnrolCommand(streams));
    all.put("legs", () -> withStatuses(new LegsCommand(streams)));
    all.put("watch", () -> new WatchCommand(streams));
    all.put("record", () -> record(streams));
    all.put("sheet", () -> new SheetCommand(streams));
    all.put("trial", () -> new TrialCommand(streams));
    all.put("connector", ConnectorCommand::new);
    all.put("scene", () -> scene(streams));
    all.put("reader", () -> reader(streams));
    all.put("sample", () -> sample(streams));
    all.put("agree", () -> new AgreeCommand(streams));
    all.put("gauge", () -> new GaugeCommand(streams));
    all.put("chart", () -> new ChartCommand(streams));
    all.put("drill", () -> DrillCommand.line(streams));
    all.put("completion", () -> new ManualCommands.CompletionCommand(streams));
    all.put("man", () -> new ManualCommands.ManCommand(streams));
    Optional<String> asked =
        Stream.of(args)
            .limit(1)
            .filter(all::containsKey)
            .filter(name -> !ManualCommands.NEED_ALL.contains(name))
            .findFirst();
    asked.ifPresent(name -> all.keySet().retainAll(Set.of(name)));
    return all;
  }

  private static CommandLine withStatuses(Object command) {
    CommandLine line = new CommandLine(command);
    line.getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit status; of several photos the first of these wins:%n")
        .exitCodeList(ExitStatus.help());
    return line;
  }

  private static CommandLine record(Streams streams) {
    return new CommandLine(new RecordCommand(streams))
        .addSubcommand(new RecordCommand.ShowCommand(streams))
        .addSubcommand(new RecordCommand.ExportCommand(streams))
        .addSubcommand(new RecordCommand.VerifyCommand(streams))
        .addSubcommand(new SayCommands.OverruleCommand(streams))
        .addSubcommand(new SayCommands.ProdCommand(streams))
        .addSubcommand(new SayCommands.MeterCommand(streams))
        .addSubcommand(new LifeCommands.NoteCommand(streams))
        .addSubcommand(new LifeCommands.HandBackCommand(streams))
        .addSubcommand(new BoardCommand(streams))
        .addSubcommand(new SealCommand(streams))
        .addSubcommand(new BackupCommand(streams))
        .addSubcommand(new ImportCommand(streams))
        .setCaseInsensitiveEnumValuesAllowed(true);
  }

  private static CommandLine reader(Streams streams) {
    return new CommandLine(new ReaderCommand())
        .addSubcommand(new ReaderCommand.PatchesCommand(streams));
  }

  private static CommandLine sample(Streams streams) {
    return new CommandLine(new SampleCommand())
        .addSubcommand(new SampleCommand.PlanCommand(streams))
        .addSubcommand(new SampleCommand.DrawCommand(streams))
        .addSubcommand(new DecideCommand(streams));
  }

  private static CommandLine scene(Streams streams) {
    return new CommandLine(new SceneCommand(streams))
        .addSubcommand(new SceneCommand.SetCommand(streams));
  }

  private static int usage(ParameterException e) {
    CommandLine command = e.getCommandLine();
    String first = e.getMessage().lines().findFirst().orElse("wrong usage");
    String name = command.getCommandSpec().qualifiedName();
    String meant = Suggestions.of(e).map(near -> "; did you mean " + near + "?").orElse("");
    command.getErr().println("leadlight: " + line(first) + meant + " (see " + name + " --help)");
    return ExitStatus.UNUSABLE.code();
  }

  /** One line that no name of a file can turn into commands to the terminal, and that ends. */
  private static String line(String message) {
    String plain = message.replaceAll("\\p{Cntrl}", "?");
    return plain.length() <= LONGEST_LINE ? plain : plain.substring(0, LONGEST_LINE) + " ...";
  }

  private static int failed(Throwable e, Streams streams) {
    if (e instanceof UserError) {
      streams.err().println("leadlight: " + line(e.getMessage()));
      return ExitStatus.UNUSABLE.code();
    }
    streams.err().println("leadlight: " + FaultLog.write(e));
    return ExitStatus.FAULT.code();
  }
}
