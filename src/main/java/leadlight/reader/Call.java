package leadlight.reader;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import leadlight.model.FaultChances;

/**
 * The faults that the reader calls. Open is one name of unwetted, no fault of its own, and a
 * quarter of overhang is part of the half.
 */
enum Call {
  MISSING(0, FaultChances::missing),
  UNWETTED(1, FaultChances::unwetted),
  EXCESS(3, FaultChances::excess),
  BRIDGE_BEFORE(4, FaultChances::bridgeBefore),
  BRIDGE_AFTER(5, FaultChances::bridgeAfter),
  BALL(7, FaultChances::ball),
  OVER_HALF(9, FaultChances::overHalf);

  private final int place;
  private final ToDoubleFunction<FaultChances> chance;

  Call(int place, ToDoubleFunction<FaultChances> chance) {
    this.place = place;
    this.chance = chance;
  }

  /** Its place among the network's scores. */
  int place() {
    return place;
  }

  /** The likeliest fault, if one is likelier than not. */
  static Optional<Call> strongest(FaultChances chances) {
    return Arrays.stream(values())
        .max(Comparator.comparingDouble(call -> call.chance.applyAsDouble(chances)))
        .filter(call -> call.chance.applyAsDouble(chances) >= 0.5);
  }
}
