package leadlight.drill.sitting;

/** What a trainee's page or terminal asked for cannot be done now; the message says why. */
public final class Refused extends Exception {

  private static final long serialVersionUID = 1L;

  Refused(String why) {
    super(why);
  }
}
