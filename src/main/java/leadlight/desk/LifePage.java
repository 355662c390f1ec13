package leadlight.desk;

import java.util.Optional;
import leadlight.model.RowOutcome;
import leadlight.page.BoardPage;
import leadlight.photo.Photo;
import leadlight.report.MarkedRow;
import leadlight.report.ShownRow;
import leadlight.summary.BoardStanding;

/** The timeline of the board on the bench. */
final class LifePage {

  private static final int ROW_PX = 1200;

  private final Bench bench;
  private final BoardStanding board;

  LifePage(Bench bench, BoardStanding board) {
    this.bench = bench;
    this.board = board;
  }

  byte[] html() {
    return BoardPage.html(
        board, bench.setup().words(), this::row, bench.setup().context().toolVersion());
  }

  String policy() {
    return BoardPage.ownPolicy();
  }

  private Optional<MarkedRow.Picture> row(BoardStanding.Shot shot) {
    if (!(shot.row().outcome() instanceof RowOutcome.Found found)) {
      return Optional.empty();
    }
    Optional<Photo> open = bench.shelf().open(shot.scoring());
    try {
      return open.map(
          photo ->
              MarkedRow.jpeg(
                  new ShownRow(
                      "",
                      shot.scoring().method().settings().row(),
                      found,
                      shot.row().standing(),
                      photo.frame()),
                  ROW_PX));
    } finally {
      open.ifPresent(Photo::close);
    }
  }
}
