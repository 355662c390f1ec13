package leadlight.data;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.stream.Collectors;

/** How far a figure can be trusted; printed beside it in reports. */
public enum Provenance {
  /** Read in the named published source. */
  PUBLISHED("published"),
  /** Recalled: check it against the named source before relying on it. */
  FROM_MEMORY("from memory"),
  /** Worked out here from the named inputs. */
  CALCULATED("calculated"),
  /** A fact of the trade that nobody seems to have published. */
  COMMON_PRACTICE("common practice, no source"),
  /** Read off a file of the user's own. */
  IMPORTED("imported"),
  /** Given by the user. */
  USER("user");

  private final String words;

  Provenance(String words) {
    this.words = words;
  }

  /** For files and people. */
  @JsonValue
  public String words() {
    return words;
  }

  @JsonCreator
  static Provenance of(String words) {
    return Arrays.stream(values())
        .filter(p -> p.words.equals(words))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + words + "\" does not fit; one of " + all() + " is needed"));
  }

  private static String all() {
    return Arrays.stream(values())
        .map(p -> "\"" + p.words + "\"")
        .collect(Collectors.joining(", "));
  }
}
