package leadlight.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import leadlight.drill.Boxes;
import leadlight.drill.DeckDraw;
import leadlight.drill.DeckMaker;
import leadlight.drill.DeckRequest;
import leadlight.drill.History;
import leadlight.drill.Level;
import leadlight.drill.MadeDeck;
import leadlight.drill.PoolJoint;
import leadlight.drill.RecordPool;
import leadlight.drill.ScenePool;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.Search;
import leadlight.vision.Threads;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leadlight drill new}: a deck. */
@Command(
    name = "new",
    description = {
      "Makes a deck of joints, or of whole rows, to be judged blind.",
      "The same pictures, options and seed make the same deck, so that several people can take it."
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

  @Mixin private RecordOption record;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "20",
      description = "Cards (default: ${DEFAULT-VALUE}).")
  private int cards;

  @Option(names = "--rows", description = "Whole rows, all pins to be judged, not single joints.")
  private boolean rows;

  @Option(
      names = "--level",
      paramLabel = "clear|mixed|borderline",
      defaultValue = "mixed",
      description = "How hard (default: ${DEFAULT-VALUE}).")
  private Level level;

  @Option(names = "--finding", paramLabel = "KIND", description = "Only such faults; repeatable.")
  private List<String> findings = List.of();

  @Option(names = "--lamp", paramLabel = "KIND", description = "Only this light; repeatable.")
  private Set<String> lamps = Set.of();

  @Option(
      names = "--class",
      paramLabel = "1|2|3",
      defaultValue = "2",
      description = "Product class (default: ${DEFAULT-VALUE}).")
  private int productClass;

  @Option(
      names = "--for",
      paramLabel = "NAME",
      description = "Draw more of what this person does not find yet, and joints not seen before.")
  private Optional<String> person = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "The same seed, the same deck (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/deck",
      description = "The deck's folder; its name is the deck's (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private Limits limits;

  DrillNewCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    ProductClass.check(productClass);
    if (cards < 1 || cards > 999) {
      throw new UserError("--cards must be 1 to 999, is " + cards);
    }
    OutputFolder.make(out);
    MadeDeck.refuseIfThere(out);
    Threads.set(1);
    Progress progress = new Progress(streams, cards);
    MadeDeck made = DeckMaker.make(pool(), draw(), request(), limits.load(), progress::done);
    made.write(out);
    streams.out().printf("%d cards, %d joints in %s%n", cards, made.deck().joints(), out);
    streams.out().println("take it: leadlight drill take " + out + " --by NAME");
    return ExitStatus.GOOD.code();
  }

  private DeckRequest request() {
    Set<FindingKind> kinds = findings.stream().map(SearchOptions::kind).collect(Collectors.toSet());
    Path name = out.toAbsolutePath().normalize().getFileName();
    return new DeckRequest(
        name == null ? "deck" : name.toString(),
        cards,
        rows,
        level,
        kinds,
        lamps,
        productClass,
        seed);
  }

  private DeckDraw draw() {
    if (person.isEmpty()) {
      return new DeckDraw(request(), new Boxes(), Set.of());
    }
    History history = DrillPeople.history(record, person.get());
    return new DeckDraw(request(), history.boxes(), history.seen());
  }

  private List<PoolJoint> pool() {
    List<PoolJoint> pool = new ArrayList<>();
    sources.scenes.forEach(folder -> pool.addAll(new ScenePool(productClass).read(folder)));
    if (sources.settled) {
      try (JobRecord open = record.existing()) {
        pool.addAll(RecordPool.read(open, Search.all(), productClass));
      }
    }
    return pool;
  }
}
