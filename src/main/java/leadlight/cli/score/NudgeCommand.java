package leadlight.cli.score;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.Reports;
import leadlight.app.score.NudgeRun;
import leadlight.app.score.ResultPlace;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.HintOptions;
import leadlight.cli.option.JobOptions;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.ReaderOption;
import leadlight.cli.option.RowOptions;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.Streams;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.JobScorer;
import leadlight.life.PhotoShelf;
import leadlight.model.result.Nudge;
import leadlight.model.result.Settings;
import leadlight.page.words.PageContext;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.scoring.Subject;
import leadlight.vision.Threads;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight nudge}: which leads move when they are pushed. */
@Command(
    name = "nudge",
    description = {
      "Compares a photo of a row at rest with photos in each of which a pick pushes one lead "
          + "lightly sideways; measures how far that lead's foot moves against its land.",
      "Writes REST.nudge.json and REST.nudge.png, and the results of score for REST with what the "
          + "nudge showed: a lead that moves is open.",
      "Push lightly and steadily, across the lead, near its toe; never pry or lift: a pick tears "
          + "lands (common practice, no source)."
    },
    mixinStandardHelpOptions = true)
public final class NudgeCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "REST PUSHED...",
      hideParamSyntax = true,
      arity = "2..*",
      description = "The photo at rest, then those with a pick, or one folder of these.")
  private List<Path> photos;

  @Mixin private ProductClass productClass;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the results (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(names = "--json", description = "Print the JSON instead of the summary.")
  private boolean json;

  @Mixin private ReaderOption reader;

  @Mixin private RowOptions row;

  @Mixin private HintOptions hint;

  @Mixin private GuardedLimits limits;

  @Mixin private PageOptions pages;

  @Mixin private ThreadOption threads;

  @Mixin private JobOptions job;

  public NudgeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    int of = productClass.number();
    Threads.set(threads.count());
    AcceptanceSet set = limits.load();
    Settings settings = new Settings(row.spec(), of, set.id(), hint.hint(), reader.opinions());
    job.subject();
    OutputFolder.make(out);
    PageContext page = pages.context(set, row.request());
    NudgeRun run = new NudgeRun(settings, set);
    NudgeRun.Result result =
        run.read(photos.get(0), NudgeRun.pushed(photos.get(0), photos.subList(1, photos.size())));
    try (result) {
      job.subject().ifPresent(subject -> record(result, subject, settings, set));
      ResultPlace place = new ResultPlace(out, job.record().place());
      return new NudgeFiles(set, page, place, json, streams).write(result).code();
    }
  }

  /** The photo at rest goes into the record, and what each pushed lead did as a prod of it. */
  private void record(
      NudgeRun.Result result, Subject subject, Settings settings, AcceptanceSet set) {
    try (JobRecord record = job.record().open()) {
      JobScorer scorer =
          new JobScorer(
              new JobScorer.Desk(
                  set,
                  Reports.writer(set, pages.context(set, row.request())),
                  record,
                  out,
                  job.person(),
                  Clock.systemDefaultZone(),
                  Optional.empty()),
              settings);
      Path kept =
          job.keep() ? new PhotoShelf(job.record().folder()).keep(photos.get(0)) : photos.get(0);
      long id = scorer.keep(result.rest(), kept, job.in(record, subject), result.alone()).scoring();
      result.nudge().leads().forEach(lead -> prod(record, id, lead));
      Reports.refresh(record, job.record().folder(), id, of -> pages.context(of, row.request()))
          .ifPresent(changed -> streams.err().println("leadlight: " + changed));
      if (!json) {
        streams.out().println("recorded as scoring " + id + ", each pushed lead as a prod");
      }
    }
  }

  private void prod(JobRecord record, long scoring, Nudge.Moved lead) {
    if (lead.motion() == Nudge.Motion.MOVES || lead.motion() == Nudge.Motion.FIRM) {
      String said = lead.motion() == Nudge.Motion.MOVES ? "moves" : "firm";
      record.bench(
          scoring,
          lead.pin(),
          new BenchResult(
              BenchTest.PROD, said, OptionalInt.empty(), job.person(), ZonedDateTime.now()));
    }
  }
}
