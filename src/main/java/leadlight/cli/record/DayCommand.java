package leadlight.cli.record;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.RunReport;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Search;
import leadlight.summary.day.DayGatherer;
import leadlight.summary.day.DaySummary;
import leadlight.summary.day.JobLine;
import leadlight.text.VerdictWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight record day}: what a day's photos come to. */
@Command(
    name = "day",
    description = {
      "Writes a summary of a day's photos, worst job first: those of the bench page and of score "
          + "--job as well as those of batch and watch.",
      "Beside the page: tables, and pictures of before and after."
    },
    mixinStandardHelpOptions = true)
public final class DayCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "YYYY-MM-DD",
      arity = "0..1",
      description = "The day (default: the last one of the record).")
  private Optional<LocalDate> asked = Optional.empty();

  @Mixin private RecordOption record;

  @Mixin private LanguageOption language;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "A folder of the day's name is made in it (default: ${DEFAULT-VALUE}).")
  private Path out;

  public DayCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    try (JobRecord open = record.existing()) {
      LocalDate day = asked.or(open::lastDay).orElseThrow(() -> none(""));
      Path folder = out.resolve(day.toString());
      DaySummary summary = DayGatherer.of(open, Search.ofDay(day), folder);
      if (summary.photos() == 0) {
        throw none(" on " + day);
      }
      OutputFolder.make(folder);
      Path page = new RunReport(open, folder, language.words()).write(summary);
      for (JobLine job : summary.jobs()) {
        streams
            .out()
            .println(
                RecordLines.printable(job.job())
                    + ": "
                    + VerdictWords.plain(job.verdict())
                    + (job.fit() ? "" : "; not fit to hand back"));
      }
      streams.out().println("wrote " + page);
      boolean fit = summary.jobs().stream().allMatch(JobLine::fit);
      Verdict worst =
          summary.jobs().stream().map(JobLine::verdict).reduce(Verdict::worse).orElseThrow();
      return (fit ? ExitStatus.of(worst) : ExitStatus.DEFECT).code();
    }
  }

  private static UserError none(String when) {
    return new UserError("no photo was scored" + when + "; \"leadlight record\" lists all");
  }
}
