package leadlight.quality;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.statistics.Rated;

/** Numbers as text; what is not a number never becomes one. */
public final class Words {

  private static final int MOST_NAMED = 30;

  private Words() {}

  /** A number with so many decimals, never "-0.00". */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a report was given " + value);
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0\\.?0*") ? text.substring(1) : text;
  }

  /** A number with four significant digits. */
  public static String significant(double value) {
    if (value == 0) {
      return "0";
    }
    int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
    return fixed(value, Math.max(0, Math.min(8, 4 - whole)));
  }

  /** A significance: "p 0.03", "p below 0.001". */
  public static String p(double p) {
    return p < 0.001 ? "p below 0.001" : "p " + fixed(p, p < 0.1 ? 3 : 2);
  }

  /** A share as "12.3 %". */
  public static String percent(double share) {
    return fixed(100 * share, 1) + " %";
  }

  /** "3 of 48 = 6.3 % (2.1 to 16.8 %)", or what there is to say if there is nothing to rate. */
  public static String rate(Rated rate) {
    return rate.of() == 0
        ? "none to rate"
        : "%d of %d = %s (%s to %s)"
            .formatted(
                rate.count(),
                rate.of(),
                percent(rate.share()),
                fixed(100 * rate.lower(), 1),
                percent(rate.upper()));
  }

  /** Up to thirty names, then how many more. */
  public static String named(List<String> names) {
    String first = names.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    return names.size() > MOST_NAMED
        ? first + " and " + (names.size() - MOST_NAMED) + " more"
        : first;
  }

  /** "1 joint", "2 joints". */
  public static String count(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
