package leadlight.joint.cut;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Named numbers about one joint or one gap, in the order in which they were added. */
public final class Signals implements ToDoubleFunction<String> {

  private final Map<String, Double> values = new LinkedHashMap<>();

  /** Adds one; a number that is not finite is a fault in the measure. */
  public Signals put(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException("signal " + name + " is " + value);
    }
    values.put(name, value);
    return this;
  }

  /** The value. */
  public double get(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("no signal " + name);
    }
    return value;
  }

  @Override
  public double applyAsDouble(String name) {
    return get(name);
  }

  /** All, in order. */
  public Map<String, Double> asMap() {
    return Collections.unmodifiableMap(values);
  }
}
