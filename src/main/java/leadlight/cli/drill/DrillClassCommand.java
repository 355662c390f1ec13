package leadlight.cli.drill;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.drill.ClassBook;
import leadlight.drill.DrillExport;
import leadlight.drill.set.OpenSet;
import leadlight.model.UserError;
import leadlight.record.DrillRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leadlight drill class}: all trainees, for their instructor. */
@Command(
    name = "class",
    description = "Shows how all trainees of the record stand, and what the class finds hardest.",
    mixinStandardHelpOptions = true)
final class DrillClassCommand implements Callable<Integer> {

  private final Streams streams;

  @Option(
      names = "--set",
      paramLabel = "DIR",
      description =
          "How all who judged this practice set to its end agree, instead of the class table.")
  private Optional<Path> set = Optional.empty();

  @Option(
      names = "--export",
      paramLabel = "FILE.csv",
      description = "Write every answer, a line each; \"leadlight agree\" reads it.")
  private Optional<Path> export = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/drill",
      description = "Folder for the page (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private LanguageOption language;

  @Mixin private RecordOption record;

  DrillClassCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    ClassBook book;
    try (DrillRecord open = DrillPeople.existing(record)) {
      book = ClassBook.of(open);
    }
    if (book.people().isEmpty()) {
      throw new UserError("nobody judged a practice set yet; \"leadlight drill judge\" begins");
    }
    if (export.isPresent()) {
      WholeFile.write(export.get(), file -> DrillExport.write(book.people(), file));
      streams.out().println(book.people().size() + " people in " + export.get());
    } else if (set.isPresent()) {
      PageShow.write(
          book.agreement(OpenSet.read(set.get()))
              .orElseThrow(() -> new UserError("nobody judged " + set.get() + " to its end yet")),
          out,
          "set-agreement",
          streams);
    } else {
      PageShow.write(book.page(language.words()), out, "class", streams);
    }
    return ExitStatus.GOOD.code();
  }
}
