package leadlight.connector.footprint;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Order of pin names: letters first, then the number behind them, as A2 before A10 before B1. */
final class PinOrder {

  private static final Pattern FORM = Pattern.compile("([A-Za-z]*)(\\d{1,9})\\b.*");

  static final Comparator<String> BY_NAME =
      Comparator.comparing(PinOrder::letters).thenComparing(PinOrder::number);

  private PinOrder() {}

  /** True if the name ends in a number to count by. */
  static boolean counts(String name) {
    return FORM.matcher(name).matches();
  }

  private static String letters(String name) {
    Matcher m = FORM.matcher(name);
    return m.matches() ? m.group(1) : name;
  }

  private static int number(String name) {
    Matcher m = FORM.matcher(name);
    return m.matches() ? Integer.parseInt(m.group(2)) : 0;
  }
}
