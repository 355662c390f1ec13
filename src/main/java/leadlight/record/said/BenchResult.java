package leadlight.record.said;

import java.time.ZonedDateTime;
import java.util.OptionalInt;

/**
 * What the bench said of a joint.
 *
 * @param test how it was tried
 * @param result one of {@link BenchTest#results()}
 * @param otherPin the other probe's pin, for a meter between two
 * @param person who
 * @param at when
 */
public record BenchResult(
    BenchTest test, String result, OptionalInt otherPin, String person, ZonedDateTime at) {

  /** Refuses a result that the test cannot have, and one without a name. */
  public BenchResult {
    if (!test.results().contains(result)) {
      throw new IllegalArgumentException(
          test.id() + " gives " + String.join(", ", test.results()) + ", not " + result);
    }
    if (person.isBlank()) {
      throw new IllegalArgumentException("a bench result needs a name");
    }
  }
}
