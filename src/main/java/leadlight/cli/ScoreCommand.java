package leadlight.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Settings;
import leadlight.model.UserError;
import leadlight.page.PhotoPage;
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
final class ScoreCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", arity = "1..*", description = "Photos to score.")
  private List<Path> photos;

  @Option(
      names = "--class",
      paramLabel = "1|2|3",
      defaultValue = "2",
      description = "Product class (default: ${DEFAULT-VALUE}).")
  private int productClass;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the results (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(names = "--json", description = "Print each photo's JSON instead of the summary.")
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

  @Mixin private ReaderOption reader;

  @Mixin private RowOptions row;

  @Mixin private HintOptions hint;

  @Mixin private BenchOption bench;

  @Mixin private Limits limits;

  @Mixin private PageOptions pages;

  @Mixin private ThreadOption threads;

  ScoreCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (productClass < 1 || productClass > 3) {
      throw new UserError("--class must be 1, 2 or 3, is " + productClass);
    }
    int count = threads.count();
    AcceptanceSet set = limits.load();
    Settings settings =
        new Settings(row.spec(), productClass, set.id(), hint.hint(), reader.opinions());
    OutputFolder.make(out);
    PhotoPage page = new PhotoPage(pages.context(set, row.request()));
    if (sameRow || placed.isPresent()) {
      if (sameRow && placed.isPresent()) {
        throw new UserError("give --same-row or --placed, not both");
      }
      if (bench.given()) {
        throw new UserError(
            "--bench judges one photo by itself: leave out --same-row and --placed");
      }
      Threads.set(count);
      TogetherRun run = new TogetherRun(settings, set, page, out, json, streams);
      return placed.map(p -> run.placed(photos, p)).orElseGet(() -> run.sameRow(photos)).code();
    }
    return new ScoreRun(settings, set, bench.bench(reader.opinions()), page, out, json, streams)
        .score(photos, count)
        .code();
  }
}
