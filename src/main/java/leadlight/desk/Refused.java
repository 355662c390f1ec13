package leadlight.desk;

/** What the page asked for cannot be done now; the message says why, in the page's language. */
final class Refused extends Exception {

  private static final long serialVersionUID = 1L;

  Refused(String why) {
    super(why);
  }
}
