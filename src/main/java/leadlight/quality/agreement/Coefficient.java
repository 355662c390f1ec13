package leadlight.quality.agreement;

import java.util.Optional;
import leadlight.quality.Estimate;
import leadlight.quality.Words;
import leadlight.statistics.ClusterRate;

/**
 * A coefficient of agreement.
 *
 * @param value the coefficient; empty if the data do not define it
 * @param interval 95 %, by photo, board or item; empty if there is too little to tell it
 * @param divided items on which grades differ, of all, by photo, board or item
 */
public record Coefficient(
    Optional<Double> value, Optional<Estimate> interval, ClusterRate divided) {

  /** "0.86 (0.78 to 0.94)", or the value and why there is no interval. */
  public String words() {
    if (value.isEmpty()) {
      return divided.of() == 0 ? "nothing in common" : "not defined: one category only";
    }
    String plain = Words.fixed(value.get(), 2);
    if (interval.isPresent()) {
      return "%s (%s to %s)"
          .formatted(
              plain,
              Words.fixed(interval.get().lower(), 2),
              Words.fixed(interval.get().upper(), 2));
    }
    if (divided.count() == 0) {
      return "%s as seen, without interval: none of %d items divided, up to %s may"
          .formatted(plain, divided.of(), Words.percent(divided.upper()));
    }
    return "%s, without interval: it hangs on single items (%d of %d divided, %s to %s)"
        .formatted(
            plain,
            divided.count(),
            divided.of(),
            Words.fixed(100 * divided.lower(), 1),
            Words.percent(divided.upper()));
  }
}
