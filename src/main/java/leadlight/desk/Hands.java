package leadlight.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import leadlight.life.BenchRules;

/**
 * What hands said last. A key that bounces, or that is pressed in two tabs at once, says a thing
 * twice; it counts once. What was refused was not said.
 */
final class Hands {

  private final Clock clock;
  private final Duration within = Duration.ofMillis(BenchRules.builtIn().twiceMs().value());
  private List<Object> last = List.of();
  private Instant at = Instant.MIN;

  Hands(Clock clock) {
    this.clock = clock;
  }

  /**
   * Records something unless the same was recorded a moment ago.
   *
   * @param what all that it says
   * @param record keeps it; if it throws, nothing was said
   * @return whether it was recorded
   */
  synchronized boolean once(List<Object> what, Runnable record) {
    Instant now = clock.instant();
    if (what.equals(last) && now.isBefore(at.plus(within))) {
      return false;
    }
    record.run();
    last = what;
    at = now;
    return true;
  }
}
