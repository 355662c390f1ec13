package leadlight.cli.drill;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.Version;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.drill.DrillExport;
import leadlight.drill.DrillPages;
import leadlight.drill.ShownPage;
import leadlight.drill.skill.History;
import leadlight.model.UserError;
import leadlight.record.DrillRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight drill history}: what one person has shown. */
@Command(
    name = "history",
    description = "Shows, exports or erases what the record has of a person's drills.",
    mixinStandardHelpOptions = true)
final class DrillHistoryCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "NAME", description = "Whose.")
  private String name;

  @Option(
      names = "--export",
      paramLabel = "FILE.csv",
      description = "Write every answer, a line each; \"leadlight agree\" reads it.")
  private Optional<Path> export = Optional.empty();

  @Option(names = "--erase", description = "Take the person out of the record, for good.")
  private boolean erase;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/drill",
      description = "Folder for the pages (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private LanguageOption language;

  @Mixin private RecordOption record;

  DrillHistoryCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (erase && export.isPresent()) {
      throw new UserError("give --export or --erase, not both: look at the export first");
    }
    try (DrillRecord open = DrillPeople.existing(record)) {
      History history = DrillPeople.history(open, name);
      if (erase) {
        int gone = open.erase(name);
        streams
            .out()
            .println(RecordLines.printable(name) + " is erased, with " + gone + " sittings");
      } else if (export.isPresent()) {
        WholeFile.write(export.get(), file -> DrillExport.write(List.of(history), file));
        streams.out().println(history.answers().size() + " answers in " + export.get());
      } else {
        String file = DrillPeople.fileName(name);
        PageShow.write(
            DrillPages.history(history, language.words()), out, "history-" + file, streams);
        PageShow.write(
            ShownPage.of(history, Version.number(), language.words()),
            out,
            "shown-" + file,
            streams);
      }
    }
    return ExitStatus.GOOD.code();
  }
}
