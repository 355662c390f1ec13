package leadlight.drill;

/** What a trainee's page or terminal asked for cannot be done now; the message says why. */
final class Refused extends Exception {

  private static final long serialVersionUID = 1L;

  Refused(String why) {
    super(why);
  }
}
