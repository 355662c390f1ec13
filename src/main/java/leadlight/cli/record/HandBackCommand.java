package leadlight.cli.record;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.Person;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.page.HandBack;
import leadlight.record.JobRecord;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.LifeEvent.Kind;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The decision. */
@Command(
    name = "hand-back",
    description = {
      "Records the decision to hand a board back, or not to, with a name.",
      "A yes is refused where something recorded contradicts it."
    },
    mixinStandardHelpOptions = true)
public final class HandBackCommand implements Callable<Integer> {

  private final Streams streams;

  @Mixin private BoardOption board;

  @Parameters(index = "2", arity = "0..1", paramLabel = "yes|no", description = "The decision.")
  private Optional<String> given = Optional.empty();

  @Option(
      names = "--because",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "What it rests on; needed for a no, and where joints were not judged.")
  private String because;

  @Mixin private RecordOption record;

  @Mixin private Person person;

  public HandBackCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    boolean yes = decision();
    try (JobRecord open = record.existing()) {
      BoardStanding stands = board.standing(open);
      HandBack.check(stands, yes, because, Messages.of("en"));
      open.add(
          stands.job(),
          stands.board(),
          new LifeEvent(
              Kind.HAND_BACK,
              because.strip(),
              List.of(),
              Optional.of(yes),
              person.name(),
              ZonedDateTime.now()));
      streams
          .out()
          .println(
              "recorded: %s, %s %s (%s)"
                  .formatted(
                      RecordLines.printable(stands.job()),
                      RecordLines.board(stands.board()),
                      yes ? "is handed back" : "is not handed back",
                      RecordLines.printable(person.name())));
    }
    return ExitStatus.GOOD.code();
  }

  private boolean decision() {
    Optional<String> said = given.or(() -> board.insteadOfBoard(Set.of("yes", "no")));
    return switch (said.orElse("")) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw new UserError(
              "say yes or no behind the job, or behind the board where it has several: "
                  + "record hand-back JOB BOARD yes");
    };
  }
}
