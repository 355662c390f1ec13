package leadlight.cli.score;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.Reports;
import leadlight.app.score.ConnectorRun;
import leadlight.app.score.JobRun;
import leadlight.app.score.ResultPlace;
import leadlight.app.score.ScoreRun;
import leadlight.app.score.TogetherRun;
import leadlight.cli.bench.BenchOption;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.HintOptions;
import leadlight.cli.option.JobOptions;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.ReaderOption;
import leadlight.cli.option.RowOptions;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Subject;
import leadlight.report.ReportWriter;
import leadlight.vision.Threads;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight score}: photos to results. */
@Command(
    name = "score",
    description = {
      "Scores the joints of a row in each photo; writes PHOTO.html to read, "
          + "PHOTO.annotated.png, PHOTO.json and PHOTO.csv.",
      "A photo that cannot be used is named and the others go on."
    },
    mixinStandardHelpOptions = true)
public final class ScoreCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", arity = "0..*", description = "Photos to score.")
  private List<Path> photos = List.of();

  @Mixin private ProductClass productClass;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the results (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--json",
      description = "Print one JSON document instead of the summary: of several photos a list.")
  private boolean json;

  @Option(
      names = "--same-row",
      description =
          "All photos show one row, under other lamps or from other sides: they are joined pin by "
              + "pin into the first (writes PHOTO.joined.json and the rest beside it).")
  private boolean sameRow;

  @Option(
      names = "--placed",
      paramLabel = "BEFORE",
      description =
          "A photo of the row as it was set down, before any iron: joints that are unchanged since "
              + "are open.")
  private Optional<Path> placed = Optional.empty();

  @Option(
      names = "--burst",
      paramLabel = "FOLDER",
      description =
          "A handful of frames of one row from a microscope that stands fixed, instead of photos: "
              + "they are stacked (writes FRAME.burst.json and the rest beside it).")
  private Optional<Path> burst = Optional.empty();

  @Mixin private LegPhotoOptions legs;

  @Mixin private ReaderOption reader;

  @Mixin private RowOptions row;

  @Mixin private HintOptions hint;

  @Mixin private BenchOption bench;

  @Mixin private GuardedLimits limits;

  @Mixin private PageOptions pages;

  @Mixin private ThreadOption threads;

  @Mixin private JobOptions job;

  @Mixin private TalkOptions talk;

  @Mixin private PresetOption preset;

  public ScoreCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    PresetOption.Meant meant = preset.in(job.record().folder());
    int of = meant.productClass(productClass.number());
    refuseNone();
    Path shown =
        burst.map(folder -> TogetherRun.frames(folder).get(0)).orElseGet(() -> photos.get(0));
    RowRequest asked = new AskLeads(streams).of(meant.row(row.request()), shown);
    Optional<Subject> subject = job.subject().map(meant::of);
    AcceptanceSet set = limits.load();
    Settings settings = new Settings(asked.spec(), of, set.id(), hint.hint(), reader.opinions());
    OutputFolder.make(out);
    ReportWriter writer = Reports.writer(set, pages.context(set, asked));
    ScoreTalk told = new ScoreTalk(streams, talk, json, writer);
    talk.detail();
    run(settings, set, writer, told, subject);
    told.end(photos.size() > 1 && !sameRow);
    return told.worst().code();
  }

  private void run(
      Settings settings,
      AcceptanceSet set,
      ReportWriter writer,
      ScoreTalk told,
      Optional<Subject> subject) {
    int count = threads.count();
    ResultPlace place = new ResultPlace(out, job.record().place());
    if (legs.given()) {
      refuseMixed(subject);
      refuseWithLegs();
      Threads.set(count);
      told.hear(
          new ConnectorRun(settings, set, writer, out)
              .score(photos, legs.solder(), legs.component(), legs.leadsAt()));
    } else if (sameRow || placed.isPresent() || burst.isPresent()) {
      refuseMixed(subject);
      if (bench.given()) {
        throw new UserError(
            "--bench judges one photo by itself: leave out --same-row, --placed and --burst");
      }
      Threads.set(count);
      TogetherRun run = new TogetherRun(settings, set, writer, place, told::hear);
      if (burst.isPresent()) {
        run.burst(burst.get());
      } else {
        placed.ifPresentOrElse(before -> run.placed(photos, before), () -> run.sameRow(photos));
      }
    } else if (subject.isPresent()) {
      Threads.set(count);
      Optional<Bench> enrolled = bench.bench(reader.opinions());
      JobRun run = new JobRun(settings, set, writer, out, told::hear, enrolled);
      try (JobRecord record = job.record().open()) {
        List<String> jobs = record.boards().stream().map(JobRecord.BoardName::job).toList();
        Subject of = job.in(record, subject.get());
        told.news(JobOptions.news(of.job(), jobs));
        run.score(photos, record, job.record().folder(), of, job.keep(), job.person());
      }
    } else {
      Optional<Bench> enrolled = bench.bench(reader.opinions());
      new ScoreRun(settings, set, enrolled, writer, place, told::hear).score(photos, count);
    }
  }

  private void refuseWithLegs() {
    if (sameRow || placed.isPresent() || burst.isPresent() || bench.given()) {
      throw new UserError("--legs goes without --same-row, --placed, --burst and --bench");
    }
  }

  private void refuseNone() {
    if (photos.isEmpty() == burst.isEmpty()) {
      throw new UserError(
          burst.isPresent()
              ? "--burst takes its frames from the folder: name no photos beside it"
              : "name a photo to score, or a folder of frames with --burst");
    }
  }

  private void refuseMixed(Optional<Subject> subject) {
    if (Stream.of(sameRow, placed.isPresent(), burst.isPresent()).filter(on -> on).count() > 1) {
      throw new UserError("give one of --same-row, --placed and --burst");
    }
    if (subject.isPresent()) {
      throw new UserError(
          "--job records single photos; record each photo, then join them without --job");
    }
  }
}
