package leadlight.cli.quality;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import leadlight.app.output.OutputFolder;
import leadlight.app.quality.DrawnSample;
import leadlight.app.quality.JointPictures;
import leadlight.app.quality.ScoredJoints;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.quality.Page;
import leadlight.quality.Table;
import leadlight.quality.sampling.Draw;
import leadlight.quality.sampling.Inspection;
import leadlight.quality.sampling.SamplePages;
import leadlight.quality.sampling.SchemePages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight sample}: which units to inspect again, and what that says of the lot. */
@Command(
    name = "sample",
    description = "Plans a sample, draws it with a blind work sheet, decides on the lot.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "plan|draw|decide")
public final class SampleCommand {

  /** {@code leadlight sample plan}. */
  @Command(
      name = "plan",
      description = "A plan for a lot and what it can tell.",
      mixinStandardHelpOptions = true)
  public static final class PlanCommand implements Callable<Integer> {

    private final Streams streams;

    @Option(names = "--lot", paramLabel = "N", required = true, description = "Units in the lot.")
    private int lot;

    @Mixin private PlanOptions options;

    @Option(
        names = "--out",
        paramLabel = "DIR",
        defaultValue = "reports/sample",
        description = "Folder for pages and tables (default: ${DEFAULT-VALUE}).")
    private Path out;

    public PlanCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      options.check();
      PageShow.write(page(), out, "plan", streams);
      return ExitStatus.GOOD.code();
    }

    private Page page() {
      if (options.isDouble()) {
        return SchemePages.page(options.choiceOfTwo(lot), lot);
      }
      if (options.isSequential()) {
        return SchemePages.page(options.sequence(), lot);
      }
      PlanOptions.Choice choice = options.choose(lot);
      return SamplePages.plan(choice.plan(), lot, choice.notes());
    }
  }

  /** {@code leadlight sample draw}. */
  @Command(
      name = "draw",
      description = {
        "Draws units at random and writes a work sheet that tells no verdict.",
        "The lot is a folder of Leadlight's CSV reports, or a CSV file with a column item."
      },
      mixinStandardHelpOptions = true)
  public static final class DrawCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "REPORTS|LOT.csv", description = "The lot.")
    private Path lot;

    @Mixin private PlanOptions options;

    @Option(names = "--boards", description = "Draw whole boards (photos), not joints.")
    private boolean boards;

    @Option(
        names = "--photos",
        paramLabel = "DIR",
        description = "Photos to cut the work sheet's pictures from.")
    private Optional<Path> photos = Optional.empty();

    @Option(
        names = "--reports",
        paramLabel = "DIR",
        description =
            "CSV reports that say where the joints of --photos are, if the lot is a table.")
    private Optional<Path> reports = Optional.empty();

    @Option(
        names = "--seed",
        paramLabel = "N",
        defaultValue = "1",
        description = "The same seed, the same draw.")
    private long seed;

    @Option(
        names = "--out",
        paramLabel = "DIR",
        defaultValue = "reports/sample",
        description = "Folder for pages and tables (default: ${DEFAULT-VALUE}).")
    private Path out;

    public DrawCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      boolean table = lot.toString().endsWith(".csv");
      Optional<Path> scored = table ? reports : Optional.of(lot);
      List<ScoredJoints.Joint> joints = scored.map(ScoredJoints::in).orElse(List.of());
      List<String> units = table ? items() : units(joints);
      Inspection plan = options.inspection(units.size());
      List<String> drawn = Draw.of(units, plan.units(), seed);
      JointPictures pictures = new JointPictures(photos.orElse(lot), joints);
      Function<String, byte[]> picture = boards ? pictures::ofPhoto : pictures::of;
      List<Page.Picture> shown =
          drawn.stream().map(u -> new Page.Picture(picture.apply(u), List.of(u))).toList();
      OutputFolder.make(out);
      DataFile.write(out.resolve("plan.json"), DrawnSample.of(units.size(), seed, plan, drawn));
      WholeFile.write(out.resolve("results.csv"), empty(drawn).getBytes(StandardCharsets.UTF_8));
      String words = "Lot of %d: %s.".formatted(units.size(), plan.words());
      PageShow.write(SamplePages.sheet(words, plan, seed, shown), out, "work-sheet", streams);
      List<String> lost = table ? List.of() : ScoredJoints.withoutRow(lot);
      if (!lost.isEmpty()) {
        streams
            .err()
            .println(
                "leadlight: not in the lot, because no row was found: "
                    + String.join(", ", lost)
                    + "; inspect these by eye");
      }
      streams.out().println("  wrote " + out.resolve("plan.json"));
      streams.out().println("  wrote " + out.resolve("results.csv") + ", to be filled in");
      return ExitStatus.GOOD.code();
    }

    private List<String> items() {
      List<String> items =
          Table.read(lot, "item").rows().stream().map(r -> r.text("item")).toList();
      if (items.stream().distinct().count() < items.size()) {
        throw new UserError(lot + " names an item twice; every unit of a lot has its own name");
      }
      return items;
    }

    private List<String> units(List<ScoredJoints.Joint> joints) {
      return joints.stream().map(j -> boards ? j.photo() : j.item()).distinct().toList();
    }

    private static String empty(List<String> drawn) {
      StringWriter text = new StringWriter();
      try (CsvWriter csv = CsvWriter.builder().build(text)) {
        csv.writeRecord("item", "verdict", "finding");
        drawn.forEach(u -> csv.writeRecord(u, "", ""));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return text.toString();
    }
  }
}
