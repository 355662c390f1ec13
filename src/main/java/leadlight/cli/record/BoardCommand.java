package leadlight.cli.record;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.Version;
import leadlight.app.record.BoardFiles;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.life.LegsFile;
import leadlight.life.PhotoShelf;
import leadlight.life.ShotRow;
import leadlight.page.BoardPage;
import leadlight.page.OpenPoints;
import leadlight.record.JobRecord;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leadlight record board}: the life of a board. */
@Command(
    name = "board",
    description = "Shows what of a board stands open, and writes a page of its whole life.",
    mixinStandardHelpOptions = true)
public final class BoardCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private BoardOption board;

  @Mixin private RecordOption record;

  @Mixin private PageOptions pages;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the page (default: ${DEFAULT-VALUE}).")
  private Path out;

  public BoardCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    OutputFolder.make(out);
    try (JobRecord open = record.existing()) {
      BoardStanding stands = board.standing(open);
      PhotoShelf shelf = new PhotoShelf(record.folder());
      Path page = out.resolve("board-" + BoardFiles.name(stands.job(), stands.board()) + ".html");
      WholeFile.write(
          page,
          BoardPage.html(
              stands,
              pages.words(),
              shot -> ShotRow.of(shelf, shot.scoring(), shot.row()),
              event -> LegsFile.picture(shelf, event),
              Version.number(),
              open.seal().toString()));
      streams
          .out()
          .println(RecordLines.printable(stands.job()) + ", " + RecordLines.board(stands.board()));
      OpenPoints.of(stands, Messages.of("en")).forEach(p -> streams.out().println("  " + p));
      streams.out().println("wrote " + page);
      return (stands.mayBeHandedBack() ? ExitStatus.of(stands.verdict()) : ExitStatus.DEFECT)
          .code();
    }
  }
}
