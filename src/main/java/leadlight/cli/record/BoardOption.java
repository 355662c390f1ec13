package leadlight.cli.record;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.cli.option.JobOptions;
import leadlight.life.BenchRules;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding;
import picocli.CommandLine.Parameters;

/** Which board of which job is meant; the nearest are named if there is none of that name. */
final class BoardOption {

  @Parameters(
      index = "0",
      paramLabel = "JOB",
      description = "The job, or the beginning of its name.")
  private String job;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "BOARD",
      description = "The board; not needed if the job has one.")
  private Optional<String> board = Optional.empty();

  /** A word that stands where the board would and is none: the board was left out. */
  Optional<String> insteadOfBoard(Set<String> words) {
    Optional<String> word = board.filter(words::contains);
    if (word.isPresent()) {
      board = Optional.empty();
    }
    return word;
  }

  /**
   * The board that is there.
   *
   * @throws UserError if it is not, naming the nearest
   */
  private JobRecord.BoardName existing(JobRecord record) {
    List<JobRecord.BoardName> all = record.boards();
    String name = job(all);
    List<JobRecord.BoardName> ofJob = all.stream().filter(b -> b.job().equals(name)).toList();
    if (board.isPresent()) {
      return ofJob.stream()
          .filter(b -> b.board().equalsIgnoreCase(board.get()))
          .findFirst()
          .orElseThrow(
              () ->
                  new UserError(
                      "job \"%s\" has no board \"%s\"; it has %s"
                          .formatted(name, board.get(), boards(ofJob))));
    }
    if (ofJob.size() > 1) {
      throw new UserError(
          "job \"%s\" has several boards: %s; name one behind the job"
              .formatted(name, boards(ofJob)));
    }
    return ofJob.get(0);
  }

  /** How the board that is there stands. */
  BoardStanding standing(JobRecord record) {
    JobRecord.BoardName name = existing(record);
    return BoardStanding.of(
        record, name.job(), name.board(), BenchRules.builtIn().mostHeats().value());
  }

  /** The board, which need not be there yet. */
  JobRecord.BoardName any(JobRecord record) {
    if (job.isBlank() || board.filter(String::isBlank).isPresent()) {
      throw new UserError("a job and a board need a name");
    }
    List<JobRecord.BoardName> all = record.boards();
    String name = JobOptions.job(job.strip(), names(all));
    List<String> ofJob =
        all.stream().filter(b -> b.job().equals(name)).map(JobRecord.BoardName::board).toList();
    return new JobRecord.BoardName(
        name, board.orElse(ofJob.size() == 1 ? ofJob.get(0) : Subject.ONLY_BOARD));
  }

  private static List<String> names(List<JobRecord.BoardName> all) {
    return all.stream().map(JobRecord.BoardName::job).distinct().toList();
  }

  private static String boards(List<JobRecord.BoardName> boards) {
    return String.join(", ", boards.stream().map(b -> "\"" + b.board() + "\"").toList());
  }

  private String job(List<JobRecord.BoardName> all) {
    List<String> found = begins(all);
    if (found.size() == 1) {
      return found.get(0);
    }
    if (found.size() > 1) {
      throw new UserError(
          "\"%s\" begins several jobs: %s".formatted(job, String.join(", ", found)));
    }
    List<String> near = JobOptions.nearest(job, names(all));
    throw new UserError(
        "the record has no job \""
            + job
            + (near.isEmpty() ? "\"; it is empty" : "\"; nearest: " + String.join(", ", near)));
  }

  /** The job of that name, else those that begin so. */
  private List<String> begins(List<JobRecord.BoardName> all) {
    List<String> jobs = names(all);
    if (jobs.contains(job)) {
      return List.of(job);
    }
    String begin = job.toLowerCase(java.util.Locale.ROOT);
    return jobs.stream()
        .filter(name -> name.toLowerCase(java.util.Locale.ROOT).startsWith(begin))
        .toList();
  }
}
