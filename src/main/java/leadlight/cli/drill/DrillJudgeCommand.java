package leadlight.cli.drill;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import leadlight.cli.option.LanguageOption;
import leadlight.cli.option.Person;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.drill.set.OpenSet;
import leadlight.drill.sitting.Judging;
import leadlight.record.DrillRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight drill judge}: judging a practice set. */
@Command(
    name = "judge",
    description = {
      "Puts a practice set before a person, on a page that only this computer can open.",
      "A set that was left in the middle goes on where it was left."
    },
    mixinStandardHelpOptions = true)
final class DrillJudgeCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "SET", description = "The practice set's folder.")
  private Path folder;

  @Mixin private Person person;

  @Option(
      names = "--tell-at-end",
      description = "Tell nothing before the last joint; for two who grade the same set.")
  private boolean tellAtEnd;

  @Mixin private DrillDesk desk;

  @Mixin private LanguageOption language;

  @Mixin private RecordOption record;

  DrillJudgeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    OpenSet set = OpenSet.read(folder);
    try (DrillRecord open = record.drill()) {
      Judging judging =
          new Judging(set, open, person.name(), tellAtEnd, ZonedDateTime::now, language.words());
      desk.sit(judging, folder, streams);
      judging.lastWords().forEach(streams.out()::println);
    }
    return ExitStatus.GOOD.code();
  }
}
