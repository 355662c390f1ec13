package leadlight.together;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * When a joint counts as changed: {@code models/motion/change.json}.
 *
 * @param leastLikeness likeness from which two photos may show one row
 * @param mostNoise how far apart light alone may leave two photos, spreads of the row's light
 * @param offset of the log odds that solder came
 * @param weights of the signals, in the order of {@link ChangeSignals}
 * @param source what the log odds were fitted on
 * @param floor added to a signal before its logarithm is taken
 * @param unchangedTo chance up to which a joint counts as unchanged
 * @param changedFrom chance from which solder surely came
 */
record ChangeTuning(
    @JsonProperty(required = true) Figure leastLikeness,
    @JsonProperty(required = true) Figure mostNoise,
    @JsonProperty(required = true) Figure offset,
    @JsonProperty(required = true) List<Double> weights,
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Figure floor,
    @JsonProperty(required = true) Figure unchangedTo,
    @JsonProperty(required = true) Figure changedFrom) {

  /** Copies the list. */
  ChangeTuning {
    weights = List.copyOf(weights);
  }

  static ChangeTuning builtIn() {
    return DataFile.builtIn("motion/change.json").read(ChangeTuning.class);
  }
}
