package leadlight.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import leadlight.life.BenchRules;

/**
 * What hands said last. A key that bounces, or that is pressed in two tabs at once, says a thing
 * twice; it counts once. What counts is when the keys were pressed: a busy computer answers the
 * second press late. What was refused was not said.
 */
final class Hands {

  private final Duration within = Duration.ofMillis(BenchRules.builtIn().twiceMs().value());
  private List<Object> last = List.of();
  private Instant at = Instant.MIN;

  /**
   * Records something unless the same was said at almost the same time.
   *
   * @param pressed when it was said, by the clock of this computer
   * @param what all that it says
   * @param record keeps it; if it throws, nothing was said
   * @return whether it was recorded
   */
  synchronized boolean once(Instant pressed, List<Object> what, Runnable record) {
    if (what.equals(last) && Duration.between(at, pressed).abs().compareTo(within) < 0) {
      return false;
    }
    record.run();
    last = what;
    at = pressed;
    return true;
  }
}
