package leadlight.cli.connector;

import java.util.Locale;

/** Millimetres as text: two decimals, three where the third says something. */
final class Mm {

  private Mm() {}

  static String text(double mm) {
    String fine = String.format(Locale.ROOT, "%.3f", mm);
    return fine.endsWith("0") ? fine.substring(0, fine.length() - 1) : fine;
  }
}
