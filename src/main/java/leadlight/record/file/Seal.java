package leadlight.record.file;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.model.UserError;

/**
 * The head of a record's chain. Who keeps a copy elsewhere can later prove that nothing up to it
 * was changed, not even by somebody who made the whole chain anew.
 *
 * @param entries how many entries it seals
 * @param hash hash of the last of them, lower-case hex; its first sixteen digits or more where
 *     somebody typed it from a printed sheet
 */
public record Seal(long entries, String hash) {

  private static final Pattern FORM = Pattern.compile("(\\d{1,18})-([0-9a-f]{16,64})");

  /** Reads what {@link #toString()} wrote. */
  public static Seal parse(String text) {
    return of(text)
        .orElseThrow(
            () ->
                new UserError(
                    "--seal "
                        + text
                        + " is no seal; give it as \"leadlight record seal\" printed it, sixteen digits"
                        + " behind the dash at least"));
  }

  /** The same; empty if it is no seal. */
  static Optional<Seal> of(String text) {
    Matcher parts = FORM.matcher(text.strip());
    return parts.matches()
        ? Optional.of(new Seal(Long.parseLong(parts.group(1)), parts.group(2)))
        : Optional.empty();
  }

  /** Whether this is the seal of an entry, as far as it was typed. */
  boolean isOf(long entry, String itsHash) {
    return entry == entries && itsHash.startsWith(hash);
  }

  @Override
  public String toString() {
    return entries + "-" + hash;
  }
}
