package leadlight.cli.record;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.record.RecordExport;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.SearchOptions;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.file.Seal;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight record}: what was seen, by whom, when, and what people said to it. */
@Command(
    name = "record",
    description = "Shows, searches, exports and checks the record of all scored photos.",
    mixinStandardHelpOptions = true)
public final class RecordCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private RecordOption record;

  @Mixin private SearchOptions search;

  public RecordCommand(Streams streams) {
    this.streams = streams;
  }

  /** The scorings that are asked for, one line each. */
  @Override
  public Integer call() {
    Search asked = search.search();
    int[] count = {0};
    try (JobRecord open = record.existing()) {
      for (Scoring scoring : open.scorings(asked)) {
        streams.out().println(RecordLines.line(scoring, open.verdict(scoring)));
        count[0]++;
      }
    }
    streams.out().println(count[0] == 1 ? "1 scoring" : count[0] + " scorings");
    return ExitStatus.GOOD.code();
  }

  /** One scoring with all its joints. */
  @Command(
      name = "show",
      description = "Shows a scoring with its joints and what people and the bench said.",
      mixinStandardHelpOptions = true)
  public static final class ShowCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "NUMBER", description = "Number of the scoring.")
    private long id;

    @Mixin private RecordOption record;

    public ShowCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      try (JobRecord open = record.existing()) {
        Scoring scoring = open.scoring(id);
        RecordLines.all(scoring, open.row(id)).forEach(streams.out()::println);
      }
      return ExitStatus.GOOD.code();
    }
  }

  /** Everything that is asked for, as a table or a tree. */
  @Command(
      name = "export",
      description =
          "Writes scorings with their joints: .csv, a line a joint, or .json; .jsonl: all of the"
              + " record, to be imported again.",
      mixinStandardHelpOptions = true)
  public static final class ExportCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "FILE.csv|.json|.jsonl", description = "The file to write.")
    private Path file;

    @Mixin private RecordOption record;

    @Mixin private SearchOptions search;

    public ExportCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      boolean json = file.toString().endsWith(".json");
      if (file.toString().endsWith(".jsonl")) {
        return all();
      }
      if (!json && !file.toString().endsWith(".csv")) {
        throw new UserError(
            file + " must end in .csv, .json or .jsonl, which says what is written");
      }
      try (JobRecord open = record.existing()) {
        List<Scoring> scorings = open.scorings(search.search());
        RecordExport export = new RecordExport(open, scorings);
        WholeFile.write(file, out -> export.write(out, json));
        streams.out().println(scorings.size() + " scorings in " + file);
      }
      return ExitStatus.GOOD.code();
    }

    private Integer all() {
      try (JobRecord open = record.existing()) {
        WholeFile.write(file, open::dump);
        streams.out().println("all of the record in " + file + ", seal " + open.seal());
      }
      return ExitStatus.GOOD.code();
    }
  }

  /** Whether all is sound. */
  @Command(
      name = "verify",
      description =
          "Checks the record: the file, its tables, its chain, the photos and the results.",
      mixinStandardHelpOptions = true)
  public static final class VerifyCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin private RecordOption record;

    @Option(
        names = "--seal",
        paramLabel = "SEAL",
        description = "What \"record seal\" printed: also check that it was of this record.")
    private Optional<String> seal = Optional.empty();

    public VerifyCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      List<String> troubles;
      try (JobRecord open = record.existing()) {
        troubles = open.troubles(seal.map(Seal::parse));
      }
      troubles.forEach(streams.out()::println);
      streams
          .out()
          .println(troubles.isEmpty() ? "the record is sound" : troubles.size() + " found");
      return (troubles.isEmpty() ? ExitStatus.GOOD : ExitStatus.UNUSABLE).code();
    }
  }
}
