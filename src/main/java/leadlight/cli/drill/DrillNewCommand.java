package leadlight.cli.drill;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import leadlight.app.output.OutputFolder;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.Limits;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.SearchOptions;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.Streams;
import leadlight.drill.pool.Level;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.pool.RecordPool;
import leadlight.drill.pool.ScenePool;
import leadlight.drill.set.MadeSet;
import leadlight.drill.set.SetDraw;
import leadlight.drill.set.SetMaker;
import leadlight.drill.set.SetRequest;
import leadlight.drill.skill.DueAgain;
import leadlight.drill.skill.History;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Search;
import leadlight.vision.Threads;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leadlight drill new}: a set. */
@Command(
    name = "new",
    description = {
      "Makes a practice set of joints, or of whole rows, to be judged blind.",
      "The same pictures, options and seed make the same set, so that several people can judge it."
    },
    mixinStandardHelpOptions = true)
final class DrillNewCommand implements Callable<Integer> {

  /** Where joints come from. */
  static final class Sources {

    @Option(
        names = "--scenes",
        paramLabel = "DIR",
        description = "Photos with truth files (leadlight scene set, sample-images).")
    private List<Path> scenes = new ArrayList<>();

    @Option(
        names = "--settled",
        description = "Joints of the record that the bench settled, or people agree on.")
    private boolean settled;
  }

  private final Streams streams;

  @ArgGroup(exclusive = false, multiplicity = "1")
  private Sources sources;

  @Mixin private LanguageOption language;

  @Mixin private RecordOption record;

  @Option(
      names = "--count",
      paramLabel = "N",
      defaultValue = "20",
      description = "How many joints, or rows with --rows (default: ${DEFAULT-VALUE}).")
  private int specimens;

  @Option(names = "--rows", description = "Whole rows, all pins to be judged, not single joints.")
  private boolean rows;

  @Option(
      names = "--difficulty",
      paramLabel = "clear|mixed|borderline",
      defaultValue = "mixed",
      description = "How hard (default: ${DEFAULT-VALUE}).")
  private Level level;

  @Option(names = "--finding", paramLabel = "KIND", description = "Only such faults; repeatable.")
  private List<String> findings = List.of();

  @Option(names = "--lamp", paramLabel = "KIND", description = "Only this light; repeatable.")
  private Set<String> lamps = Set.of();

  @Mixin private ProductClass productClass;

  @Option(
      names = "--for",
      paramLabel = "NAME",
      description = "Draw more of what this person does not find yet, and joints not seen before.")
  private Optional<String> person = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "The same seed, the same set (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/practice-set",
      description = "Its folder; the folder's name is the set's (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private Limits limits;

  DrillNewCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (specimens < 1 || specimens > 999) {
      throw new UserError("--count must be 1 to 999, is " + specimens);
    }
    OutputFolder.make(out);
    MadeSet.refuseIfThere(out);
    Threads.set(1);
    Progress progress = new Progress(streams, specimens);
    MadeSet made = SetMaker.make(pool(), draw(), request(), limits.load(), progress::done);
    made.write(out);
    streams.out().printf("%d pictures, %d joints in %s%n", specimens, made.set().joints(), out);
    streams.out().println("judge it: leadlight drill judge " + out + " --by NAME");
    return ExitStatus.GOOD.code();
  }

  private SetRequest request() {
    Set<FindingKind> kinds = findings.stream().map(SearchOptions::kind).collect(Collectors.toSet());
    Path name = out.toAbsolutePath().normalize().getFileName();
    return new SetRequest(
        name == null ? "practice-set" : name.toString(),
        specimens,
        rows,
        level,
        kinds,
        lamps,
        productClass.number(),
        seed,
        language.words());
  }

  private SetDraw draw() {
    if (person.isEmpty()) {
      return new SetDraw(request(), new DueAgain(), Set.of());
    }
    History history = DrillPeople.history(record, person.get());
    return new SetDraw(request(), history.due(), history.seen());
  }

  private List<PoolJoint> pool() {
    List<PoolJoint> pool = new ArrayList<>();
    sources.scenes.forEach(
        folder -> pool.addAll(new ScenePool(productClass.number(), language.words()).read(folder)));
    if (sources.settled) {
      try (JobRecord open = record.existing()) {
        pool.addAll(RecordPool.read(open, Search.all(), productClass.number(), language.words()));
      }
    }
    return pool;
  }
}
