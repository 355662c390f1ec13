package leadlight.cli.drill;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.HintOptions;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.Person;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.RowOptions;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.drill.set.OpenSet;
import leadlight.drill.sitting.Judging;
import leadlight.drill.sitting.OwnWork;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.result.Settings;
import leadlight.photo.Deadline;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.DrillRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight drill own}: grading one's own row before the tool's score is seen. */
@Command(
    name = "own",
    description = {
      "Lets a person grade every pin of a row that they soldered, then shows Leadlight's score "
          + "beside: agreed, missed, over-called, and what to look at.",
      "Leadlight is not the truth; what differs is settled at the bench."
    },
    mixinStandardHelpOptions = true)
final class DrillOwnCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", description = "Photo of the row.")
  private Path file;

  @Mixin private ProductClass productClass;

  @Mixin private RowOptions row;

  @Mixin private HintOptions hint;

  @Mixin private GuardedLimits limits;

  @Mixin private Person person;

  @Mixin private DrillDesk desk;

  @Mixin private LanguageOption language;

  @Mixin private RecordOption record;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/own",
      description = "Folder for the straightened row, with --terminal (default: ${DEFAULT-VALUE}).")
  private Path out;

  DrillOwnCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    OpenSet set = set(limits.load());
    Path pictures = out.resolve(file.getFileName());
    if (desk.inTerminal()) {
      OutputFolder.make(pictures);
      set.pictures().forEach((name, jpeg) -> WholeFile.write(pictures.resolve(name), jpeg));
    }
    try (DrillRecord open = record.drill()) {
      Judging judging =
          new Judging(set, open, person.name(), false, ZonedDateTime::now, language.words());
      desk.sit(judging, pictures, streams);
      judging.lastWords().forEach(streams.out()::println);
    }
    return ExitStatus.GOOD.code();
  }

  private OpenSet set(AcceptanceSet set) {
    Settings settings = new Settings(row.spec(), productClass.number(), set.id(), hint.hint());
    PhotoScorer scorer = new PhotoScorer(settings, set);
    String known = set.builtIn() ? set.fileId() : "";
    return new Deadline()
        .reading(file, photo -> OwnWork.of(scorer.score(photo), photo, known, language.words()));
  }
}
