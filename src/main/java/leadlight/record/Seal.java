package leadlight.record;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.model.UserError;

/**
 * The head of a record's chain. Who keeps a copy elsewhere can later prove that nothing up to it
 * was changed, not even by somebody who made the whole chain anew.
 *
 * @param entries how many entries it seals
 * @param hash hash of the last of them, lower-case hex
 */
public record Seal(long entries, String hash) {

  private static final Pattern FORM = Pattern.compile("(\\d{1,18})-([0-9a-f]{64})");

  /** Reads what {@link #toString()} wrote. */
  public static Seal parse(String text) {
    Matcher parts = FORM.matcher(text.strip());
    if (!parts.matches()) {
      throw new UserError(
          "--seal " + text + " is no seal; give it as \"leadlight record seal\" printed it");
    }
    return new Seal(Long.parseLong(parts.group(1)), parts.group(2));
  }

  @Override
  public String toString() {
    return entries + "-" + hash;
  }
}
