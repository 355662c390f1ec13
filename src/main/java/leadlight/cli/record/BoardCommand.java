package leadlight.cli.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.OutputFolder;
import leadlight.cli.terminal.RecordLines;
import leadlight.cli.terminal.Streams;
import leadlight.cli.terminal.Version;
import leadlight.data.Hash;
import leadlight.data.WholeFile;
import leadlight.life.BenchRules;
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

  private static final int LONGEST = 60;
  private static final int HASH = 8;

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
      JobRecord.BoardName name = board.existing(open);
      BoardStanding stands =
          BoardStanding.of(
              open, name.job(), name.board(), BenchRules.builtIn().mostHeats().value());
      PhotoShelf shelf = new PhotoShelf(record.folder());
      Path page = out.resolve("board-" + file(name.job(), name.board()) + ".html");
      WholeFile.write(
          page,
          BoardPage.html(
              stands,
              pages.words(),
              shot -> ShotRow.of(shelf, shot.scoring(), shot.row()),
              event -> LegsFile.picture(shelf, event),
              Version.number()));
      streams
          .out()
          .println(RecordLines.printable(name.job()) + ", " + RecordLines.board(name.board()));
      OpenPoints.of(stands, Messages.of("en")).forEach(p -> streams.out().println("  " + p));
      streams.out().println("wrote " + page);
      return (stands.mayBeHandedBack() ? ExitStatus.of(stands.verdict()) : ExitStatus.DEFECT)
          .code();
    }
  }

  /** JOB--BOARD as one file name that no other job or board has. */
  public static String file(String job, String board) {
    return file(job) + "--" + file(board);
  }

  /**
   * A name whose words single blanks part, with hyphens for them; of any other the hash is added.
   */
  private static String file(String name) {
    String plain = name.replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String cut =
        plain.substring(
            0,
            plain.offsetByCodePoints(
                0, Math.min(LONGEST, plain.codePointCount(0, plain.length()))));
    return name.equals(cut.replace('-', ' '))
        ? cut
        : cut + "~" + Hash.sha256(name.getBytes(StandardCharsets.UTF_8)).substring(0, HASH);
  }
}
