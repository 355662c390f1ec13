package leadlight.cli.scene;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.app.output.OutputFolder;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.pipeline.InOrder;
import leadlight.scene.BenchSets;
import leadlight.scene.BurstSets;
import leadlight.scene.LampSets;
import leadlight.scene.NudgeSets;
import leadlight.scene.PlacedPairs;
import leadlight.scene.SceneFiles;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.legs.LegMix;
import leadlight.scene.legs.LegRenderer;
import leadlight.scene.legs.LegSampler;
import leadlight.scene.legs.LegScene;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Scene;
import leadlight.scene.render.SceneRenderer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight scene}: pictures with exact truth. */
@Command(
    name = "scene",
    description = {
      "Renders scene files into pictures with exact truth.",
      "A scene file says everything; each picture's own is written beside it."
    },
    mixinStandardHelpOptions = true)
public final class SceneCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "SCENE.json", arity = "0..*", description = "Scene files.")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "scenes",
      description = "Folder for pictures, truth and scene files (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private ThreadOption threads;

  public SceneCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (files.isEmpty()) {
      throw new UserError("name a scene file, or draw a set with leadlight scene set");
    }
    OutputFolder.make(out);
    InOrder.each(
        files,
        threads.count(),
        this::rendered,
        name -> streams.out().println(out.resolve(name + ".jpg")));
    return ExitStatus.GOOD.code();
  }

  /** Renders a scene file of a row, or of anchor legs; returns the picture's name. */
  private String rendered(Path file) {
    if (file.getFileName().toString().endsWith(".legs.scene.json")) {
      LegScene legs = LegRenderer.render(SceneFiles.readLegs(file));
      SceneFiles.write(legs, out);
      return legs.spec().name();
    }
    Scene scene = SceneRenderer.render(SceneFiles.read(file));
    SceneFiles.write(scene, out);
    return scene.spec().name();
  }

  /** {@code leadlight scene set}: a set of pictures drawn from a mix. */
  @Command(
      name = "set",
      description = "Renders a set of pictures drawn from a mix file; the same seed, the same set.",
      mixinStandardHelpOptions = true)
  public static final class SetCommand implements Callable<Integer> {

    private static final String SETS = "--placed, --lamps, --nudges, --bursts and --benches";

    private final Streams streams;

    @Parameters(paramLabel = "MIX.json", description = "What to draw from (models/scene).")
    private Path mix;

    @Option(
        names = "--count",
        paramLabel = "N",
        defaultValue = "24",
        description = "Pictures (default: ${DEFAULT-VALUE}).")
    private int count;

    @Option(
        names = "--from",
        paramLabel = "N",
        defaultValue = "0",
        description = "Number of the first picture (default: ${DEFAULT-VALUE}).")
    private int from;

    @Option(
        names = "--seed",
        paramLabel = "N",
        defaultValue = "1",
        description = "Another seed, another set (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(
        names = "--out",
        paramLabel = "DIR",
        defaultValue = "scenes",
        description = "Folder for pictures, truth and scene files (default: ${DEFAULT-VALUE}).")
    private Path out;

    @Option(
        names = "--placed",
        description = "Pairs instead: each row as it was set down, and after soldering.")
    private boolean placed;

    @Option(
        names = "--lamps",
        description = "Sets instead: each row under three lamps, NAME-a, NAME-b and NAME-c.")
    private boolean lamps;

    @Option(
        names = "--nudges",
        description =
            "Sets instead: each row at rest, NAME-a, and with single leads pushed by a pick, NAME-b "
                + "and on.")
    private boolean nudges;

    @Option(
        names = "--bursts",
        description = "Sets instead: five frames of each row from a camera that stands fixed.")
    private boolean bursts;

    @Option(
        names = "--benches",
        description =
            "Mock benches instead: of each a dozen photos under one lamp, sound, unsoldered, mixed.")
    private boolean benches;

    @Option(
        names = "--legs",
        description = "Pictures of anchor legs instead; the mix is models/scene/mix-legs.json.")
    private boolean legs;

    @Mixin private ThreadOption threads;

    public SetCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      IntConsumer drawn = legs ? legsDrawn() : rowsDrawn(drawn(SceneMix.read(mix)));
      OutputFolder.make(out);
      Progress progress = new Progress(streams, count);
      int[] done = {0};
      InOrder.each(
          IntStream.range(from, from + count).boxed().toList(),
          threads.count(),
          number -> {
            drawn.accept(number);
            return number;
          },
          number -> progress.done(++done[0]));
      streams.out().println(count + " pictures with truth in " + out);
      return ExitStatus.GOOD.code();
    }

    private IntConsumer rowsDrawn(IntFunction<List<SceneSpec>> specs) {
      return number ->
          specs.apply(number).forEach(spec -> SceneFiles.write(SceneRenderer.render(spec), out));
    }

    private IntConsumer legsDrawn() {
      if (sets().findAny().isPresent()) {
        throw new UserError("--legs goes without " + SETS);
      }
      LegSampler sampler = new LegSampler(LegMix.read(mix), seed);
      return number -> SceneFiles.write(LegRenderer.render(sampler.draw(number)), out);
    }

    private Stream<Boolean> sets() {
      return Stream.of(placed, lamps, nudges, bursts, benches).filter(asked -> asked);
    }

    private IntFunction<List<SceneSpec>> drawn(SceneMix from) {
      if (sets().count() > 1) {
        throw new UserError("give one of " + SETS);
      }
      if (benches) {
        return new BenchSets(from, seed)::bench;
      }
      if (placed) {
        return new PlacedPairs(from, seed)::pair;
      }
      if (lamps) {
        return new LampSets(from, seed)::set;
      }
      if (nudges) {
        return new NudgeSets(from, seed)::set;
      }
      if (bursts) {
        return new BurstSets(from, seed)::set;
      }
      SceneSampler set = new SceneSampler(from, seed);
      return number -> List.of(set.draw(number));
    }
  }
}
