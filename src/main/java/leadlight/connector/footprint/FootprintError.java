package leadlight.connector.footprint;

/** Something wrong at a place in a footprint; {@link FootprintReader} adds the file's name. */
final class FootprintError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  FootprintError(SExpression.Place at, String what) {
    super("line " + at.line() + " column " + at.column() + ": " + what, null, false, false);
  }
}
