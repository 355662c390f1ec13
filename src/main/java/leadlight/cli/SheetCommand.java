package leadlight.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.data.WholeFile;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Settings;
import leadlight.page.CustomerSheet;
import leadlight.page.PageContext;
import leadlight.page.SheetRequest;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight sheet}: one page for the customer. */
@Command(
    name = "sheet",
    description = {
      "Makes a page for the customer, before and after in plain words.",
      "Writes PHOTO.sheet.html and PHOTO.sheet.pdf. Sheets of that name are replaced."
    },
    mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", description = "The row as it is now.")
  private Path now;

  @Option(names = "--before", paramLabel = "PHOTO", description = "The row before the work.")
  private Path before;

  @Option(names = "--job", paramLabel = "TEXT", description = "The job.")
  private String job;

  @Option(names = "--board", paramLabel = "TEXT", description = "The board.")
  private String board;

  @Option(
      names = "--signed",
      paramLabel = "NAME",
      description = "Who looked at the joints and signs; nobody by default.")
  private String signed;

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
      description = "Folder for the sheet (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private RowOptions row;

  @Mixin private Limits limits;

  @Mixin private PageOptions pages;

  SheetCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    ProductClass.check(productClass);
    AcceptanceSet set = limits.load();
    Settings settings = new Settings(row.spec(), productClass, set.id(), Optional.empty());
    PageContext context = pages.context(set, row.request());
    OutputFolder.make(out);
    PhotoScorer scorer = new PhotoScorer(settings, set);
    try (Photo after = new PhotoReader().read(now);
        Photo first = before == null ? null : new PhotoReader().read(before)) {
      write(
          new CustomerSheet(
              context,
              new SheetRequest(told(job), told(board), told(signed)),
              Optional.ofNullable(first).map(photo -> shot(scorer, photo)),
              shot(scorer, after)));
    }
    return ExitStatus.GOOD.code();
  }

  private static Optional<String> told(String text) {
    return Optional.ofNullable(text).filter(given -> !given.isBlank());
  }

  private static CustomerSheet.Shot shot(PhotoScorer scorer, Photo photo) {
    return new CustomerSheet.Shot(scorer.score(photo), photo.frame());
  }

  private void write(CustomerSheet sheet) {
    String file = now.getFileName().toString();
    int dot = file.lastIndexOf('.');
    String base = dot > 0 ? file.substring(0, dot) : file;
    write(out.resolve(base + ".sheet.html"), sheet.html());
    write(out.resolve(base + ".sheet.pdf"), sheet.pdf());
  }

  private void write(Path file, byte[] content) {
    WholeFile.write(file, content);
    streams.out().println("wrote " + file);
  }
}
