package leadlight.cli.option;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
      description =
          "The job that the photo is of, or the beginning of its name if it is in the record: the "
              + "record is written.")
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

  /**
   * What is meant of a record: a job by the beginning of its name, as other commands take it, lest
   * "0412" became a second job beside "0412 logger"; and where no board was named and the job has
   * one, that one, whatever its name.
   */
  public Subject in(JobRecord open, Subject subject) {
    List<JobRecord.BoardName> all = open.boards();
    String name = job(subject.job(), all.stream().map(JobRecord.BoardName::job).toList());
    List<String> boards =
        all.stream().filter(it -> it.job().equals(name)).map(JobRecord.BoardName::board).toList();
    return new Subject(
        name,
        board.isEmpty() && boards.size() == 1 ? boards.get(0) : subject.board(),
        subject.stage(),
        subject.attempt(),
        subject.port());
  }

  /** The job that is meant: the one that begins so, if it is one and none has the very name. */
  public static String job(String said, List<String> jobs) {
    String begin = said.toLowerCase(Locale.ROOT);
    List<String> begun =
        jobs.stream()
            .distinct()
            .filter(name -> begins(name.toLowerCase(Locale.ROOT), begin))
            .toList();
    return begun.size() == 1 && !jobs.contains(said) ? begun.get(0) : said;
  }

  /**
   * What is to be said of a job that the record does not have yet, since its name may be a slip.
   *
   * @param jobs those that it has
   * @return "; a new job, nearest: 0412"; empty if it has the job, or none at all
   */
  public static String news(String job, List<String> jobs) {
    return jobs.isEmpty() || jobs.contains(job)
        ? ""
        : "; a new job, nearest: " + String.join(", ", nearest(job, jobs));
  }

  /** The likest three jobs of a record, the likest first. */
  public static List<String> nearest(String job, List<String> jobs) {
    return jobs.stream()
        .distinct()
        .sorted(
            Comparator.comparingInt((String name) -> Likeness.edits(job, name))
                .thenComparing(name -> name))
        .limit(3)
        .toList();
  }

  /** Whole words alone: job 1 is not the beginning of job 10. */
  private static boolean begins(String name, String with) {
    return name.startsWith(with)
        && (name.length() == with.length()
            || !Character.isLetterOrDigit(name.charAt(with.length())));
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
