package leadlight.cli.option;

import java.util.List;
import java.util.Optional;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.text.Likeness;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which job a photo is of, for the record; nothing is recorded without a job. */
public final class JobOptions {

  @Option(
      names = "--job",
      paramLabel = "NAME",
      description = "The job that the photo is of: the record is written.")
  private Optional<String> job = Optional.empty();

  @Option(
      names = "--board",
      paramLabel = "NAME",
      description = "Which board of the job (default: its only one, else 1).")
  private Optional<String> board = Optional.empty();

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
  public Optional<Subject> subject() {
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
    if (job.isPresent() && (job.get().isBlank() || board.filter(String::isBlank).isPresent())) {
      throw new UserError("--job and --board need a name");
    }
    String of = board.map(String::strip).orElse(Subject.ONLY_BOARD);
    return job.map(name -> new Subject(name.strip(), of, reached, attempt, port));
  }

  /** Where no board was named and the job has one, that is meant, whatever its name. */
  public Subject in(JobRecord open, Subject subject) {
    List<String> boards =
        open.boards().stream()
            .filter(it -> it.job().equals(subject.job()))
            .map(JobRecord.BoardName::board)
            .toList();
    return board.isEmpty() && boards.size() == 1
        ? new Subject(
            subject.job(), boards.get(0), subject.stage(), subject.attempt(), subject.port())
        : subject;
  }

  public boolean keep() {
    return keep;
  }

  public RecordOption record() {
    return record;
  }

  public String person() {
    return person.name();
  }
}
