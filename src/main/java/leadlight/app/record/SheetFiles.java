package leadlight.app.record;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import leadlight.data.WholeFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.life.StandingPhoto;
import leadlight.model.UserError;
import leadlight.page.CustomerSheet;
import leadlight.page.SheetRequest;
import leadlight.page.words.PageContext;
import leadlight.photo.Photo;
import leadlight.record.file.Seal;
import leadlight.record.said.LifeEvent;
import leadlight.summary.board.BoardStanding;

/** The customer's sheet of a board, from the record, as files. */
public final class SheetFiles {

  private final AcceptanceSet limits;
  private final PageContext context;
  private final PhotoShelf shelf;

  /**
   * Takes what all sheets share.
   *
   * @param shelf the record's photos
   */
  public SheetFiles(AcceptanceSet limits, PageContext context, PhotoShelf shelf) {
    this.limits = limits;
    this.context = context;
    this.shelf = shelf;
  }

  /**
   * Writes sheet-JOB--BOARD.html and .pdf; their paths.
   *
   * @param shop name of the workshop, if it is to stand on the sheet
   * @param seal of the record
   * @throws UserError if the record has no photo of the board, or of several rows
   */
  public List<Path> write(BoardStanding stands, Optional<String> shop, Seal seal, Path out) {
    Optional<LifeEvent> decision = stands.decision();
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
    Optional<Photo> before = first.equals(now) ? Optional.empty() : shelf.open(first.scoring());
    try (Photo after = opened(now)) {
      CustomerSheet sheet =
          new CustomerSheet(
              context,
              request(stands, decision, shop, seal, now),
              before.map(photo -> shot(photo, first)),
              shot(after, now));
      String file = "sheet-" + BoardFiles.name(stands.job(), stands.board());
      Path html = out.resolve(file + ".html");
      WholeFile.write(html, sheet.html());
      Path pdf = out.resolve(file + ".pdf");
      WholeFile.write(pdf, sheet.pdf());
      return List.of(html, pdf);
    } finally {
      before.ifPresent(Photo::close);
    }
  }

  private Photo opened(BoardStanding.Shot shot) {
    return shelf
        .open(shot.scoring())
        .orElseThrow(
            () ->
                new UserError(
                    "the photo "
                        + shot.scoring().photoPath()
                        + " is gone or was changed; put it back, then rerun"));
  }

  private CustomerSheet.Shot shot(Photo photo, BoardStanding.Shot of) {
    return new CustomerSheet.Shot(
        StandingPhoto.of(limits, photo, of.scoring(), of.row()), photo.frame());
  }

  private static SheetRequest request(
      BoardStanding stands,
      Optional<LifeEvent> decision,
      Optional<String> shop,
      Seal seal,
      BoardStanding.Shot now) {
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
        seal.toString(),
        at.toLocalDate().toString());
  }
}
