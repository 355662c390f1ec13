package leadlight.model;

/**
 * Something a user can mend: one line that says what, where and what to do. Never carries a stack
 * trace to the terminal.
 */
public final class UserError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Takes the line. */
  public UserError(String line) {
    super(line, null, false, false);
  }
}
