package leadlight.reader;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import leadlight.model.SolderChances;

/**
 * The questions, in the order of the network's scores. Open is one name of unwetted, no fault of
 * its own.
 */
enum Call {
  MISSING(SolderChances::missing),
  UNWETTED(SolderChances::unwetted),
  OPEN(chances -> 0),
  EXCESS(SolderChances::excess),
  BRIDGE_BEFORE(SolderChances::bridgeBefore),
  BRIDGE_AFTER(SolderChances::bridgeAfter);

  private final ToDoubleFunction<SolderChances> chance;

  Call(ToDoubleFunction<SolderChances> chance) {
    this.chance = chance;
  }

  /** The likeliest fault, if one is likelier than not. */
  static Optional<Call> strongest(SolderChances chances) {
    return Arrays.stream(values())
        .max(Comparator.comparingDouble(call -> call.chance.applyAsDouble(chances)))
        .filter(call -> call.chance.applyAsDouble(chances) >= 0.5);
  }
}
