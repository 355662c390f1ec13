package leadlight.cli;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import leadlight.drill.OpenDeck;
import leadlight.drill.Taking;
import leadlight.record.DrillRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight drill take}: judging a deck. */
@Command(
    name = "take",
    description = {
      "Puts a deck before a person, on a page that only this computer can open.",
      "A deck that was left in the middle goes on where it was left."
    },
    mixinStandardHelpOptions = true)
final class DrillTakeCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "DECK", description = "The deck's folder.")
  private Path folder;

  @Mixin private Person person;

  @Option(
      names = "--tell-at-end",
      description = "Tell nothing before the last card; for two who grade the same deck.")
  private boolean tellAtEnd;

  @Mixin private DrillDesk desk;

  @Mixin private RecordOption record;

  DrillTakeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    OpenDeck deck = OpenDeck.read(folder);
    try (DrillRecord open = DrillRecord.open(record.folder())) {
      Taking taking = new Taking(deck, open, person.name(), tellAtEnd, ZonedDateTime::now);
      desk.sit(taking, folder, streams);
      taking.lastWords().forEach(streams.out()::println);
    }
    return ExitStatus.GOOD.code();
  }
}
