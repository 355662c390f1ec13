package leadlight.desk;

import leadlight.life.LegsFile;
import leadlight.life.ShotRow;
import leadlight.page.BoardPage;
import leadlight.summary.board.BoardStanding;

/** The timeline of the board on the bench. */
final class LifePage {

  private final Bench bench;
  private final BoardStanding board;

  LifePage(Bench bench, BoardStanding board) {
    this.bench = bench;
    this.board = board;
  }

  byte[] html() {
    return BoardPage.html(
        board,
        bench.setup().words(),
        shot -> ShotRow.of(bench.shelf(), shot.scoring(), shot.row()),
        event -> LegsFile.picture(bench.shelf(), event),
        bench.setup().context().toolVersion());
  }

  String policy() {
    return BoardPage.ownPolicy();
  }
}
