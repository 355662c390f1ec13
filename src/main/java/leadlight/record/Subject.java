package leadlight.record;

/**
 * What a photo is of.
 *
 * @param job name of the job
 * @param board which board of the job
 * @param stage when it was photographed
 * @param attempt which time this stage was reached, from 1: a second rework is 2
 */
public record Subject(String job, String board, Stage stage, int attempt) {

  /** Refuses empty names and an attempt below 1. */
  public Subject {
    if (job.isBlank() || board.isBlank()) {
      throw new IllegalArgumentException("a job and a board need a name");
    }
    if (attempt < 1) {
      throw new IllegalArgumentException("attempt must be at least 1, is " + attempt);
    }
  }

  /** "after rework", "after rework 2". */
  public String stageWords() {
    return attempt == 1 ? stage.words() : stage.words() + " " + attempt;
  }
}
