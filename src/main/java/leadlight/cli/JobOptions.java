package leadlight.cli;

import java.util.Optional;
import leadlight.model.UserError;
import leadlight.record.Stage;
import leadlight.record.Subject;
import leadlight.text.Likeness;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which job a photo is of, for the record; nothing is recorded without a job. */
final class JobOptions {

  @Option(
      names = "--job",
      paramLabel = "NAME",
      description = "The job that the photo is of: the record is written.")
  private Optional<String> job = Optional.empty();

  @Option(
      names = "--board",
      paramLabel = "NAME",
      defaultValue = Subject.ONLY_BOARD,
      description = "Which board of the job (default: ${DEFAULT-VALUE}).")
  private String board;

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      defaultValue = "as-received",
      description = "as-received, after-rework or final (default: ${DEFAULT-VALUE}).")
  private String stage;

  @Option(
      names = "--attempt",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which time this stage was reached (default: ${DEFAULT-VALUE}).")
  private int attempt;

  @Option(
      names = "--port",
      paramLabel = "NAME",
      description = "Which of several equal rows of the board, in your own words: \"port A\".")
  private Optional<String> port = Optional.empty();

  @Option(
      names = "--keep-photo",
      description = "Keep a copy in the record's own folder, so that nothing breaks when it moves.")
  private boolean keep;

  @Mixin private RecordOption record;

  @Mixin private Person person;

  /** What the photo is of; empty if no job was named. */
  Optional<Subject> subject() {
    if (attempt < 1) {
      throw new UserError("--attempt must be 1 or more, is " + attempt);
    }
    Stage reached =
        Stage.of(stage)
            .orElseThrow(
                () ->
                    new UserError(
                        "--stage must be as-received, after-rework or final, is "
                            + stage
                            + Likeness.nearest(stage, Stage.ids())
                                .map(near -> "; did you mean " + near + "?")
                                .orElse("")));
    if (job.isPresent() && (job.get().isBlank() || board.isBlank())) {
      throw new UserError("--job and --board need a name");
    }
    return job.map(name -> new Subject(name.strip(), board.strip(), reached, attempt, port));
  }

  boolean keep() {
    return keep;
  }

  RecordOption record() {
    return record;
  }

  String person() {
    return person.name();
  }
}
