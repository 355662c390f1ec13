package leadlight.cli.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import leadlight.app.enrol.BenchWords;
import leadlight.app.enrol.CheckRun;
import leadlight.app.enrol.EnrolRun;
import leadlight.app.enrol.RecordTeaching;
import leadlight.cli.option.HintOptions;
import leadlight.cli.option.Limits;
import leadlight.cli.option.ReaderOption;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.RowOptions;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.enrol.BenchFolder;
import leadlight.enrol.DefaultBench;
import leadlight.enrol.learn.Enrolment;
import leadlight.life.PhotoShelf;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.record.JobRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight enrol}: a bench is shown its own known joints. */
@Command(
    name = "enrol",
    description = {
      "Shows a bench its own known joints, so that photos of it are judged by them.",
      "",
      "What counts: rows that were prodded or work (--sound), rows set down and not yet soldered "
          + "(--unsoldered), lands without leads (--bare: "
          + "what looks most like one is not vouched for; they prove nothing of leads), single known joints (--faults, a table "
          + "with the columns photo, pin, state: sound or unsoldered). At least two photos of "
          + "sound and two of unsoldered rows, each taken anew, in the light you work in.",
      "Photos are added to those shown before, as a new version; the file names each by its hash.",
      "Then: leadlight score PHOTO --bench BENCH."
    },
    mixinStandardHelpOptions = true)
public final class EnrolCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "BENCH", description = "The bench's name, as ring-lamp.")
  private String name;

  @Mixin private ShownPhotos photos;

  @Option(
      names = "--anew",
      description =
          "Forget what was shown before; the version counts on. With --check: lamp or camera were "
              + "changed on purpose, a new series begins and the last one is kept aside.")
  private boolean anew;

  @Option(names = "--show", description = "Say what the bench was shown and what that proves.")
  private boolean show;

  @Option(
      names = "--compare",
      paramLabel = "VERSION",
      description = "Say what changed since an earlier version.")
  private Optional<Integer> compare = Optional.empty();

  @Option(names = "--undo", description = "Take the last version back; its file is kept aside.")
  private boolean undo;

  @Option(
      names = "--from-record",
      description =
          "Propose a version that learns from bench results and opinions in the record, and say "
              + "which verdicts of the past it would change; --adopt puts it into use.")
  private boolean fromRecord;

  @Option(names = "--adopt", description = "Put the proposed version into use.")
  private boolean adopt;

  @Option(
      names = "--check",
      paramLabel = "PHOTO",
      arity = "1..*",
      description =
          "The day's photo of the check board, always the same one: charts shade, colour, focus and "
              + "light, and says whether the bench is as it was.")
  private List<Path> check = List.of();

  @Option(
      names = "--default",
      negatable = true,
      description =
          "Photos come from this bench where none is named (score, batch, watch, bench); "
              + "--no-default: they do not any more.")
  private Optional<Boolean> byDefault = Optional.empty();

  @Mixin private BenchOption.BenchesOption benches;

  @Mixin private RecordOption record;

  @Mixin private RowOptions row;

  @Mixin private HintOptions hint;

  @Mixin private ReaderOption reader;

  @Mixin private Limits limits;

  public EnrolCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    BenchFolder folder = new BenchFolder(benches.folder(), name);
    boolean teaches = photos.given();
    boolean forgets = anew && check.isEmpty();
    long asked =
        Stream.of(
                show,
                undo,
                compare.isPresent(),
                byDefault.isPresent(),
                fromRecord,
                adopt,
                !check.isEmpty(),
                forgets)
            .filter(it -> it)
            .count();
    if (asked > 1 || (teaches && asked == 1 && !forgets)) {
      throw new UserError(
          "ask for one thing at a time: photos to show (with --anew or without), --show, --compare,"
              + " --undo, --from-record, --adopt, --check (with --anew or without) or --default");
    }
    if (undo) {
      Path aside = folder.takeBack();
      streams.out().println("taken back, kept as " + aside);
      return shown(folder.latest());
    }
    if (!check.isEmpty()) {
      folder.inUse();
      return checked();
    }
    if (fromRecord) {
      return proposed(folder);
    }
    if (adopt) {
      streams.out().println("put into use: " + folder.adopt());
      return shown(folder.latest());
    }
    if (byDefault.isPresent()) {
      streams.out().println(settled(byDefault.get()));
      return ExitStatus.GOOD.code();
    }
    if (compare.isPresent()) {
      BenchWords.compared(folder.version(compare.get()), folder.inUse())
          .forEach(streams.out()::println);
      return ExitStatus.GOOD.code();
    }
    if (show) {
      return shown(Optional.of(folder.inUse()));
    }
    if (!teaches) {
      throw new UserError("name photos: --sound PHOTO... --unsoldered PHOTO..., or ask for --show");
    }
    return taught(folder);
  }

  private int checked() {
    CheckRun.Checked checked =
        new CheckRun(name, benches.folder(), settings(), limits.load()).check(check, anew);
    checked.aside().ifPresent(it -> say("a new series begins; the last is kept as " + it));
    PageShow.write(checked.page(), benches.folder().resolve(name), "checks", streams);
    return (checked.asItWas() ? ExitStatus.GOOD : ExitStatus.UNJUDGED).code();
  }

  private int proposed(BenchFolder folder) {
    try (JobRecord open = record.existing()) {
      PhotoShelf shelf = new PhotoShelf(record.folder());
      RecordTeaching.propose(folder, name, open, shelf, limits.load()).forEach(this::say);
    }
    return ExitStatus.GOOD.code();
  }

  private String settled(boolean isDefault) {
    if (isDefault) {
      DefaultBench.set(benches.folder(), name);
      return "photos are of bench %s from now on where no bench is named; --no-bench leaves it out"
          .formatted(name);
    }
    return DefaultBench.clear(benches.folder(), name)
        ? "no bench is the default any more"
        : "bench %s was not the default".formatted(name);
  }

  private int shown(Optional<Enrolment> enrolment) {
    enrolment
        .map(BenchWords::of)
        .orElse(List.of("bench " + name + " is not enrolled any more"))
        .forEach(streams.out()::println);
    return ExitStatus.GOOD.code();
  }

  private int taught(BenchFolder folder) {
    Optional<Enrolment> before = anew ? Optional.empty() : folder.latest();
    EnrolRun run = new EnrolRun(name, settings(), limits.load(), before);
    photos.show(run, this::say);
    Enrolment enrolment = run.enrolment(folder.next());
    Path file = folder.write(enrolment);
    BenchWords.of(enrolment).forEach(streams.out()::println);
    streams.out().println("written: " + file);
    return ExitStatus.GOOD.code();
  }

  private Settings settings() {
    return new Settings(row.spec(), 2, limits.load().id(), hint.hint(), reader.opinions());
  }

  private void say(String line) {
    streams.out().println(line);
  }
}
