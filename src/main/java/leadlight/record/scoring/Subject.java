package leadlight.record.scoring;

import java.util.Optional;

/**
 * What a photo is of.
 *
 * @param job name of the job
 * @param board which board of the job
 * @param stage when it was photographed
 * @param attempt which time this stage was reached, from 1: a second rework is 2
 * @param port which of several equal rows of the board, in the shop's own words; empty if it has
 *     one
 */
public record Subject(String job, String board, Stage stage, int attempt, Optional<String> port) {

  /** The stored name, in every language, of a job's board that nobody named. */
  public static final String ONLY_BOARD = "1";

  /** Of a board that has one row of its kind. */
  public Subject(String job, String board, Stage stage, int attempt) {
    this(job, board, stage, attempt, Optional.empty());
  }

  /** Refuses empty names and an attempt below 1; a blank port is none. */
  public Subject {
    if (job.isBlank() || board.isBlank()) {
      throw new IllegalArgumentException("a job and a board need a name");
    }
    port = port.map(String::strip).filter(name -> !name.isEmpty());
    if (attempt < 1) {
      throw new IllegalArgumentException("attempt must be at least 1, is " + attempt);
    }
  }

  /** "board 1" of a board whose name is a mere number; any other name as it is. */
  public static String boardWords(String board) {
    return isNumber(board) ? "board " + board : board;
  }

  /** Whether a board's name is a mere number, which says nothing without a word before it. */
  public static boolean isNumber(String board) {
    return board.matches("[0-9]+");
  }

  /** "after rework", "after rework 2". */
  public String stageWords() {
    return attempt == 1 ? stage.words() : stage.words() + " " + attempt;
  }

  /** "after rework", "after rework 2, port A". */
  public String words() {
    return stageWords() + port.map(name -> ", " + name).orElse("");
  }

  /** The same of another port. */
  public Subject at(Optional<String> other) {
    return new Subject(job, board, stage, attempt, other);
  }
}
