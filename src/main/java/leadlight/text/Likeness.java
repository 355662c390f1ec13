package leadlight.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How alike two words are, to guess what was meant. */
public final class Likeness {

  private Likeness() {}

  /**
   * The least number of characters to put in, leave out, change or swap with the next one to make
   * one word of the other, whatever their case (optimal string alignment; the textbook recurrence).
   */
  public static int edits(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int k = 0; k <= b.length(); k++) {
        d[i][k] = i == 0 || k == 0 ? i + k : least(d, a, b, i, k);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int least(int[][] d, String a, String b, int i, int k) {
    int change = d[i - 1][k - 1] + (a.charAt(i - 1) == b.charAt(k - 1) ? 0 : 1);
    int least = Math.min(change, Math.min(d[i - 1][k], d[i][k - 1]) + 1);
    boolean swapped =
        i > 1 && k > 1 && a.charAt(i - 1) == b.charAt(k - 2) && a.charAt(i - 2) == b.charAt(k - 1);
    return swapped ? Math.min(least, d[i - 2][k - 2] + 1) : least;
  }

  /**
   * The likest of some words, if it is like enough: at most a third of it differs, or begins so.
   */
  public static Optional<String> nearest(String word, Collection<String> words) {
    return words.stream()
        .min(
            Comparator.comparingInt((String known) -> distance(word, known))
                .thenComparing(known -> known))
        .filter(known -> distance(word, known) <= Math.max(1, known.length() / 3));
  }

  private static int distance(String word, String known) {
    boolean begins =
        word.length() > 2
            && known.toLowerCase(Locale.ROOT).startsWith(word.toLowerCase(Locale.ROOT));
    return begins ? 1 : edits(word, known);
  }
}
