package leadlight.cli.record;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.cli.option.Limits;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.OutputFolder;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.data.WholeFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.BenchRules;
import leadlight.life.PhotoShelf;
import leadlight.life.StandingPhoto;
import leadlight.model.UserError;
import leadlight.page.CustomerSheet;
import leadlight.page.HandBack;
import leadlight.page.SheetRequest;
import leadlight.photo.Photo;
import leadlight.record.JobRecord;
import leadlight.record.said.LifeEvent;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leadlight sheet}: one page for the customer. */
@Command(
    name = "sheet",
    description = {
      "Makes a page for the customer from the record of a job: before and after in plain words.",
      "Says no more than the record does: what nobody saw is \"not inspected\". Refuses where"
          + " something recorded contradicts a hand-back.",
      "Writes sheet-JOB--BOARD.html and .pdf; an earlier sheet of the same board is replaced."
    },
    mixinStandardHelpOptions = true)
public final class SheetCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private BoardOption board;

  @Option(names = "--shop", paramLabel = "TEXT", description = "Name of the workshop.")
  private Optional<String> shop = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the sheet (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private RecordOption record;

  @Mixin private Limits limits;

  @Mixin private PageOptions pages;

  public SheetCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    OutputFolder.make(out);
    try (JobRecord open = record.existing()) {
      JobRecord.BoardName name = board.existing(open);
      BoardStanding stands =
          BoardStanding.of(
              open, name.job(), name.board(), BenchRules.builtIn().mostHeats().value());
      Optional<LifeEvent> decision = stands.decision();
      boolean stays = decision.flatMap(LifeEvent::good).map(yes -> !yes).orElse(false);
      if (!stays && !stands.mayBeHandedBack()) {
        streams
            .err()
            .println(
                "leadlight: no sheet, for the record contradicts a hand-back: "
                    + HandBack.contradictions(stands, Messages.of("en")));
        return ExitStatus.DEFECT.code();
      }
      return write(stands, decision).code();
    }
  }

  private ExitStatus write(BoardStanding stands, Optional<LifeEvent> decision) {
    if (stands.rows() > 1) {
      throw new UserError(
          "the board has photos of %d rows and a sheet tells of one; make a board of each row"
              .formatted(stands.rows()));
    }
    BoardStanding.Shot now =
        stands.last().stream()
            .max((a, b) -> a.verdict().compareTo(b.verdict()))
            .orElseThrow(() -> new UserError("no photo of this board is in the record"));
    BoardStanding.Shot first =
        stands.shots().stream().filter(now::isOfSameRow).findFirst().orElseThrow();
    PhotoShelf shelf = new PhotoShelf(record.folder());
    AcceptanceSet set = limits.load();
    Optional<Photo> before = first.equals(now) ? Optional.empty() : shelf.open(first.scoring());
    try (Photo after = opened(shelf, now)) {
      CustomerSheet sheet =
          new CustomerSheet(
              pages.context(set, RowRequest.NONE),
              request(stands, decision, now),
              before.map(photo -> shot(set, photo, first)),
              shot(set, after, now));
      String file = "sheet-" + BoardCommand.file(stands.job(), stands.board());
      write(out.resolve(file + ".html"), sheet.html());
      write(out.resolve(file + ".pdf"), sheet.pdf());
    } finally {
      before.ifPresent(Photo::close);
    }
    return ExitStatus.of(stands.verdict());
  }

  private static Photo opened(PhotoShelf shelf, BoardStanding.Shot shot) {
    return shelf
        .open(shot.scoring())
        .orElseThrow(
            () ->
                new UserError(
                    "the photo "
                        + shot.scoring().photoPath()
                        + " is gone or was changed; put it back, then rerun"));
  }

  private static CustomerSheet.Shot shot(AcceptanceSet set, Photo photo, BoardStanding.Shot of) {
    return new CustomerSheet.Shot(
        StandingPhoto.of(set, photo, of.scoring(), of.row()), photo.frame());
  }

  private SheetRequest request(
      BoardStanding stands, Optional<LifeEvent> decision, BoardStanding.Shot now) {
    Optional<LifeEvent> looked = stands.lastOf(LifeEvent.Kind.LOOKED);
    ZonedDateTime at = decision.map(LifeEvent::at).orElse(now.scoring().scoredAt());
    return new SheetRequest(
        stands.job(),
        stands.board(),
        stands.lastOf(LifeEvent.Kind.SERIAL).map(LifeEvent::words),
        shop.filter(text -> !text.isBlank()),
        looked.map(LifeEvent::words),
        looked.map(LifeEvent::person),
        stands.legs(),
        decision.flatMap(LifeEvent::good),
        decision.map(LifeEvent::words).orElse(""),
        decision.map(LifeEvent::person),
        at.toLocalDate().toString());
  }

  private void write(Path file, byte[] content) {
    WholeFile.write(file, content);
    streams.out().println("wrote " + file);
  }
}
