package leadlight.cli.record;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.record.PinList;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.JobOptions;
import leadlight.cli.option.Person;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.life.LegsFile;
import leadlight.life.PhotoShelf;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.LifeEvent.Kind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is noted of a board beside its photos. */
public final class LifeCommands {

  private LifeCommands() {}

  /** Anything but the decision. */
  @Command(
      name = "note",
      description = {
        "Notes of a board what no photo of the row shows: complaint, serial number, part and lot,"
            + " heats, how it was looked at, the anchor legs, the function test.",
        "Job and board are made if they are not there."
      },
      mixinStandardHelpOptions = true)
  public static final class NoteCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin private BoardOption board;

    @Option(names = "--complaint", paramLabel = "TEXT", description = "What the customer says.")
    private Optional<String> complaint = Optional.empty();

    @Option(names = "--serial", paramLabel = "TEXT", description = "The board's serial number.")
    private Optional<String> serial = Optional.empty();

    @Option(
        names = "--part",
        paramLabel = "TEXT",
        description = "Part and lot of the new connector.")
    private Optional<String> part = Optional.empty();

    @Option(names = "--heat", paramLabel = "PINS", description = "Pins that were heated: 3,5,7-9.")
    private Optional<String> heat = Optional.empty();

    @Option(
        names = "--with",
        paramLabel = "TEXT",
        description = "With what they were heated (default: iron).")
    private Optional<String> tool = Optional.empty();

    @Option(
        names = "--looked",
        paramLabel = "TEXT",
        description = "You confirm that each joint was looked at, and say how.")
    private Optional<String> looked = Optional.empty();

    @Option(
        names = "--legs-report",
        paramLabel = "FILE",
        description =
            "PHOTO.legs.json, as \"leadlight legs\" wrote it, or PHOTO.connector.json of"
                + " \"leadlight score --legs\"; repeatable.")
    private List<Path> legs = List.of();

    @Option(
        names = "--port",
        paramLabel = "NAME",
        description = "Which of several equal connectors of the board the legs are of.")
    private Optional<String> port = Optional.empty();

    @Option(
        names = "--function-test",
        paramLabel = "pass|fail",
        description = "Whether the board works.")
    private Optional<String> test = Optional.empty();

    @Option(
        names = "--tested",
        paramLabel = "TEXT",
        defaultValue = "",
        description = "What was tested.")
    private String tested;

    @Mixin private RecordOption record;

    @Mixin private Person person;

    public NoteCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      List<LifeEvent> events = events();
      if (!tested.isEmpty() && test.isEmpty()) {
        throw new UserError("--tested goes with --function-test pass or fail");
      }
      if (port.isPresent() && legs.isEmpty()) {
        throw new UserError("--port goes with --legs-report");
      }
      if (tool.isPresent() && heat.isEmpty()) {
        throw new UserError("--with goes with --heat");
      }
      if (events.isEmpty()) {
        throw new UserError("nothing to note; say --complaint, --serial, --part, --heat, ...");
      }
      try (JobRecord open = record.open()) {
        JobRecord.BoardName name = board.any(open);
        String news =
            JobOptions.news(
                name.job(), open.boards().stream().map(JobRecord.BoardName::job).toList());
        events.forEach(event -> open.add(name.job(), name.board(), event));
        streams
            .out()
            .println(
                "recorded: %s, %s: %s (%s)%s"
                    .formatted(
                        RecordLines.printable(name.job()),
                        RecordLines.board(name.board()),
                        String.join(", ", events.stream().map(e -> e.kind().id()).toList()),
                        RecordLines.printable(person.name()),
                        RecordLines.printable(news)));
      }
      return ExitStatus.GOOD.code();
    }

    private List<LifeEvent> events() {
      List<LifeEvent> events = new ArrayList<>();
      add(events, Kind.COMPLAINT, complaint);
      add(events, Kind.SERIAL, serial);
      add(events, Kind.PART, part);
      heat.ifPresent(
          pins ->
              events.add(
                  event(Kind.HEAT, tool.orElse("iron"), PinList.of(pins), Optional.empty())));
      add(events, Kind.LOOKED, looked);
      PhotoShelf shelf = new PhotoShelf(record.folder());
      for (Path file : legs) {
        add(events, Kind.LEGS, Optional.of(LegsFile.seen(file, shelf).at(port).words()));
      }
      test.ifPresent(
          result ->
              events.add(
                  event(Kind.FUNCTION_TEST, tested, List.of(), Optional.of(passed(result)))));
      return events;
    }

    private static boolean passed(String result) {
      return switch (result) {
        case "pass" -> true;
        case "fail" -> false;
        default -> throw new UserError("--function-test must be pass or fail, is " + result);
      };
    }

    private void add(List<LifeEvent> events, Kind kind, Optional<String> words) {
      words
          .filter(text -> !text.isBlank())
          .ifPresent(text -> events.add(event(kind, text.strip(), List.of(), Optional.empty())));
    }

    private LifeEvent event(Kind kind, String words, List<Integer> pins, Optional<Boolean> good) {
      return new LifeEvent(kind, words, pins, good, person.name(), ZonedDateTime.now());
    }
  }
}
