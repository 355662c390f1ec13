package leadlight.cli.trial;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.trial.BurstTrial;
import leadlight.app.trial.EnrolTrial;
import leadlight.app.trial.LegTrial;
import leadlight.app.trial.NudgeTrial;
import leadlight.app.trial.PlacedTrial;
import leadlight.app.trial.RecordBench;
import leadlight.app.trial.SameRowTrial;
import leadlight.app.trial.TrialFiles;
import leadlight.app.trial.TrialRun;
import leadlight.cli.bench.BenchOption;
import leadlight.cli.option.BodyOption;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.enrol.Bench;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.row.RowHint;
import leadlight.quality.bench.BenchPages;
import leadlight.quality.bench.BenchTally;
import leadlight.record.JobRecord;
import leadlight.record.engine.RecordPlace;
import leadlight.trial.sets.EnrolTally;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight trial}: how right Leadlight is on photos with truth. */
@Command(
    name = "trial",
    description = {
      "Scores photos whose truth is known and says how right that was.",
      "Told to the scoring are the number of leads and the pitch alone (for unevenly pitched rows "
          + "the connector). Truth is stated for product "
          + "class 2; joints at the limit are not counted."
    },
    mixinStandardHelpOptions = true)
public final class TrialCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "Photos with *.truth.json (exact) or *.row.json (annotated rows) beside them.")
  private Path folder;

  @Option(
      names = "--truth-positions",
      description = "Give the true row to the joints, to tell their errors from the row's.")
  private boolean truePositions;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/trial",
      description =
          "Folder for trial.json and the sheets of close-ups (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--opinions",
      paramLabel = "both|measures|reader",
      converter = WhoseOpinions.class,
      defaultValue = "both",
      description =
          "Whose opinion on the solder decides: both, measures or reader (default: "
              + "${DEFAULT-VALUE}).")
  private Opinions opinions;

  @Option(names = "--json", description = "Print trial.json instead of the table.")
  private boolean json;

  @Option(
      names = "--measures",
      paramLabel = "FILE.csv",
      description = "Write truth, verdict and all numbers of each joint of a found row.")
  private Path measures;

  @Option(
      names = "--joints",
      paramLabel = "FILE.csv",
      description = "Write conditions, truth, verdict and toe position of every joint with truth.")
  private Path joints;

  @Mixin private BodyOption body;

  @Option(
      names = "--record",
      paramLabel = "DIR|URL",
      description =
          "Instead of photos with truth: the tool's opinions in this record beside what the bench "
              + "and people said of them.")
  private Optional<String> record = Optional.empty();

  @Option(
      names = "--sets",
      paramLabel = "KIND",
      description =
          "Count sets of photos of one row instead of single photos: nudge (one at rest, then leads"
              + " pushed), placed (NAME-before, NAME-after), same-row or burst (NAME-a, NAME-b"
              + " ...); or photos of anchor legs: legs.")
  private Optional<String> sets = Optional.empty();

  @Option(
      names = "--enrol",
      paramLabel = "PLAN.csv",
      description =
          "Count what enrolled benches are worth: a table with the columns bench, photo, as (sound,"
              + " unsoldered, known, judge) and pins (all, odd, even); writes DIR/enrol.csv.")
  private Optional<Path> enrol = Optional.empty();

  @Option(
      names = "--unfamiliar",
      description = "With --enrol: as if all photos were of a make that is not known.")
  private boolean unfamiliar;

  @Mixin private BenchOption.Named bench;

  @Mixin private BenchOption.BenchesOption benches;

  @Mixin private ThreadOption threads;

  @Mixin private GuardedLimits limits;

  public TrialCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (record.isPresent() == (folder != null)) {
      throw new UserError("a trial takes a FOLDER of photos with truth, or --record DIR; name one");
    }
    if (record.isPresent()) {
      return bench(RecordPlace.parse(record.get()));
    }
    int count = threads.count();
    if (bench.given() && (sets.isPresent() || enrol.isPresent())) {
      throw new UserError("--bench is for photos one by one: leave out --sets and --enrol");
    }
    if (sets.isPresent()) {
      sets(sets.get()).forEach(streams.out()::println);
      return ExitStatus.GOOD.code();
    }
    if (enrol.isPresent()) {
      return enrolled(enrol.get());
    }
    Optional<Bench> enrolled = bench.bench(benches, opinions);
    List<TrialPhoto> photos = TruthFolder.read(folder);
    OutputFolder.make(out);
    TrialRun run =
        new TrialRun(
            limits.load(),
            truePositions,
            measures != null,
            RowHint.of(Optional.empty(), body.side()),
            opinions,
            enrolled);
    Progress progress = new Progress(streams, photos.size());
    run.score(photos, count, progress::done);
    TrialFiles files = new TrialFiles(run, truePositions, enrolled.map(Bench::identity));
    files.write(out, Optional.ofNullable(measures), Optional.ofNullable(joints));
    String whose = enrolled.map(it -> "judged as of bench " + it.words() + "\n").orElse("");
    streams.out().print(json ? files.report() : whose + files.table());
    return ExitStatus.GOOD.code();
  }

  private List<String> sets(String kind) {
    return switch (kind) {
      case "placed" -> PlacedTrial.lines(folder, limits.load(), threads.count());
      case "same-row" -> SameRowTrial.lines(folder, limits.load(), threads.count());
      case "burst" -> BurstTrial.lines(folder, limits.load(), threads.count());
      case "legs" -> LegTrial.lines(folder, limits.load(), threads.count());
      case "nudge" -> NudgeTrial.lines(folder, threads.count());
      default ->
          throw new UserError("--sets must be nudge, placed, same-row, burst or legs, is " + kind);
    };
  }

  private int bench(RecordPlace at) {
    if (!JobRecord.isIn(at)) {
      throw new UserError("no record in " + at + "; name where it is with --record");
    }
    try (JobRecord open = JobRecord.open(at)) {
      BenchTally tally = BenchTally.of(RecordBench.read(open));
      PageShow.write(BenchPages.page(tally), out, "bench", streams);
    }
    return ExitStatus.GOOD.code();
  }

  private int enrolled(Path plan) {
    EnrolTally tally = new EnrolTrial(folder, limits.load(), opinions, unfamiliar).count(plan);
    OutputFolder.make(out);
    WholeFile.write(
        out.resolve("enrol.csv"),
        (String.join("\n", tally.csv()) + "\n").getBytes(StandardCharsets.UTF_8));
    tally.lines().forEach(streams.out()::println);
    return ExitStatus.GOOD.code();
  }

  /** Reads whose opinion decides by its name in files. */
  private static final class WhoseOpinions implements ITypeConverter<Opinions> {

    @Override
    public Opinions convert(String id) {
      return Arrays.stream(Opinions.values())
          .filter(opinions -> opinions.id().equals(id))
          .findFirst()
          .orElseThrow(() -> new UserError("say both, measures or reader, not " + id));
    }
  }
}
