package leadlight.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import leadlight.cli.batch.BatchCommand;
import leadlight.cli.batch.WatchCommand;
import leadlight.cli.bench.BenchCommand;
import leadlight.cli.bench.EnrolCommand;
import leadlight.cli.connector.ConnectorCommand;
import leadlight.cli.drill.DrillCommand;
import leadlight.cli.quality.AgreeCommand;
import leadlight.cli.quality.ChartCommand;
import leadlight.cli.quality.DecideCommand;
import leadlight.cli.quality.GaugeCommand;
import leadlight.cli.quality.SampleCommand;
import leadlight.cli.record.BackupCommand;
import leadlight.cli.record.BoardCommand;
import leadlight.cli.record.DayCommand;
import leadlight.cli.record.HandBackCommand;
import leadlight.cli.record.ImportCommand;
import leadlight.cli.record.LifeCommands;
import leadlight.cli.record.MoveCommand;
import leadlight.cli.record.RecordCommand;
import leadlight.cli.record.RolesCommand;
import leadlight.cli.record.SayCommands;
import leadlight.cli.record.SealCommand;
import leadlight.cli.record.SheetCommand;
import leadlight.cli.scene.ReaderCommand;
import leadlight.cli.scene.SceneCommand;
import leadlight.cli.score.LegsCommand;
import leadlight.cli.score.NudgeCommand;
import leadlight.cli.score.NudgeWatch;
import leadlight.cli.score.ScoreCommand;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.cli.trial.TrialCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** All commands, and which of them a call needs to know in full: {@code docs/start-up.md}. */
final class Commands {

  private final Streams streams;
  private final Map<String, Entry> all = new LinkedHashMap<>();

  /** A command, and how it is made with all its options. */
  private record Entry(Class<?> type, Supplier<Object> made) {

    /** Name and description alone, as a list of commands and a slip of the finger need them. */
    CommandSpec listed() {
      CommandSpec spec = CommandSpec.create();
      spec.usageMessage().description(type.getAnnotation(Command.class).description());
      return spec;
    }
  }

  Commands(Streams streams) {
    this.streams = streams;
    put("bench", BenchCommand.class, () -> new BenchCommand(streams));
    put("score", ScoreCommand.class, () -> withStatuses(new ScoreCommand(streams)));
    put("nudge", NudgeCommand.class, () -> withStatuses(new NudgeCommand(streams)));
    put("batch", BatchCommand.class, () -> withStatuses(new BatchCommand(streams)));
    put("enrol", EnrolCommand.class, () -> new EnrolCommand(streams));
    put("legs", LegsCommand.class, () -> withStatuses(new LegsCommand(streams)));
    put("watch", WatchCommand.class, () -> new WatchCommand(streams, new NudgeWatch(streams)));
    put("record", RecordCommand.class, this::record);
    put("sheet", SheetCommand.class, () -> new SheetCommand(streams));
    put("trial", TrialCommand.class, () -> new TrialCommand(streams));
    put("connector", ConnectorCommand.class, ConnectorCommand::new);
    put("scene", SceneCommand.class, this::scene);
    put("reader", ReaderCommand.class, this::reader);
    put("sample", SampleCommand.class, this::sample);
    put("agree", AgreeCommand.class, () -> new AgreeCommand(streams));
    put("gauge", GaugeCommand.class, () -> new GaugeCommand(streams));
    put("chart", ChartCommand.class, () -> new ChartCommand(streams));
    put("drill", DrillCommand.class, () -> DrillCommand.line(streams));
    put(
        "completion",
        ManualCommands.CompletionCommand.class,
        () -> new ManualCommands.CompletionCommand(streams));
    put("man", ManualCommands.ManCommand.class, () -> new ManualCommands.ManCommand(streams));
  }

  private void put(String name, Class<?> type, Supplier<Object> made) {
    all.put(name, new Entry(type, made));
  }

  /**
   * The commands that the arguments concern, each with all its options; or all of them by their
   * descriptions, where none is asked for by name. To read what all have to offer takes longer than
   * many a command runs.
   */
  Map<String, Object> askedFor(String... args) {
    String first = args.length == 0 ? "" : args[0];
    Map<String, Object> asked = new LinkedHashMap<>();
    if (all.containsKey(first) && !ManualCommands.NEED_ALL.contains(first)) {
      asked.put(first, all.get(first).made().get());
    } else if (all.containsKey(first) || args.length > 1 && first.startsWith("-")) {
      all.forEach((name, entry) -> asked.put(name, entry.made().get()));
    } else {
      all.forEach((name, entry) -> asked.put(name, entry.listed()));
    }
    return asked;
  }

  private static CommandLine withStatuses(Object command) {
    CommandLine line = new CommandLine(command);
    line.getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit status; of several photos the first of these wins:%n")
        .exitCodeList(ExitStatus.help());
    return line;
  }

  private CommandLine record() {
    return new CommandLine(new RecordCommand(streams))
        .addSubcommand(new RecordCommand.ShowCommand(streams))
        .addSubcommand(new RecordCommand.ExportCommand(streams))
        .addSubcommand(new RecordCommand.VerifyCommand(streams))
        .addSubcommand(new SayCommands.OverruleCommand(streams))
        .addSubcommand(new SayCommands.ProdCommand(streams))
        .addSubcommand(new SayCommands.MeterCommand(streams))
        .addSubcommand(new LifeCommands.NoteCommand(streams))
        .addSubcommand(new HandBackCommand(streams))
        .addSubcommand(new BoardCommand(streams))
        .addSubcommand(new DayCommand(streams))
        .addSubcommand(new SealCommand(streams))
        .addSubcommand(new BackupCommand(streams))
        .addSubcommand(new ImportCommand(streams))
        .addSubcommand(new MoveCommand(streams))
        .addSubcommand(new RolesCommand(streams))
        .setCaseInsensitiveEnumValuesAllowed(true);
  }

  private CommandLine reader() {
    return new CommandLine(new ReaderCommand())
        .addSubcommand(new ReaderCommand.PatchesCommand(streams));
  }

  private CommandLine sample() {
    return new CommandLine(new SampleCommand())
        .addSubcommand(new SampleCommand.PlanCommand(streams))
        .addSubcommand(new SampleCommand.DrawCommand(streams))
        .addSubcommand(new DecideCommand(streams));
  }

  private CommandLine scene() {
    return new CommandLine(new SceneCommand(streams))
        .addSubcommand(new SceneCommand.SetCommand(streams));
  }
}
