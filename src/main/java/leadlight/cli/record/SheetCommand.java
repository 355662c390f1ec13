package leadlight.cli.record;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.record.SheetFiles;
import leadlight.cli.option.Limits;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.page.HandBack;
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
      BoardStanding stands = board.standing(open);
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
      AcceptanceSet set = limits.load();
      new SheetFiles(set, pages.context(set, RowRequest.NONE), new PhotoShelf(record.folder()))
          .write(stands, shop, open.seal(), out)
          .forEach(file -> streams.out().println("wrote " + file));
      return ExitStatus.of(stands.verdict()).code();
    }
  }
}
