package leadlight.together;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * When a joint counts as changed: {@code models/motion/change.json}.
 *
 * @param leastOwn likeness of what is a row's own from which two photos may show one row
 * @param mostNoise how far apart light alone may leave two photos, spreads of the row's light
 * @param offset of the log odds that solder came
 * @param weights of the signals, in the order of {@link ChangeSignals}
 * @param source what the log odds were fitted on
 * @param floor added to a signal before its logarithm is taken
 * @param unchangedTo chance up to which a joint counts as unchanged
 * @param changedFrom chance from which solder surely came
 * @param flat what is added to the squared spreads of a zone's light, squared spreads of the row's
 * @param light how the two photos' light is made alike
 * @param zones where solder would show
 */
record ChangeTuning(
    @JsonProperty(required = true) Figure leastOwn,
    @JsonProperty(required = true) Figure mostNoise,
    @JsonProperty(required = true) Figure offset,
    @JsonProperty(required = true) List<Double> weights,
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Figure floor,
    @JsonProperty(required = true) Figure unchangedTo,
    @JsonProperty(required = true) Figure changedFrom,
    @JsonProperty(required = true) Figure flat,
    @JsonProperty(required = true) Light light,
    @JsonProperty(required = true) Zones zones) {

  /**
   * How the two photos' light is made alike.
   *
   * @param burntFrom grey level from which a pixel is burnt and its light is not known
   * @param rounding grey levels that a camera never tells apart
   * @param belief that gain is 1 and the levels are alike, as a share of the pixels
   * @param rounds of the robust fit
   * @param enoughPx pixels that are fitted at most, about
   */
  record Light(
      @JsonProperty(required = true) Figure burntFrom,
      @JsonProperty(required = true) Figure rounding,
      @JsonProperty(required = true) Figure belief,
      @JsonProperty(required = true) Figure rounds,
      @JsonProperty(required = true) Figure enoughPx) {}

  /**
   * Where solder would show, and where it cannot; pitches.
   *
   * @param halfLand half a land's width
   * @param beside from a lead's middle to where its sides begin
   * @param behindToe how far behind the toe solder in front of it reaches
   * @param halfJoint how far to either side of a lead's middle a joint reaches
   * @param behindHeel how far behind the heel it reaches
   * @param halfTop half the width of a lead's top that solder does not reach
   */
  record Zones(
      @JsonProperty(required = true) Figure halfLand,
      @JsonProperty(required = true) Figure beside,
      @JsonProperty(required = true) Figure behindToe,
      @JsonProperty(required = true) Figure halfJoint,
      @JsonProperty(required = true) Figure behindHeel,
      @JsonProperty(required = true) Figure halfTop) {}

  /** Copies the list. */
  ChangeTuning {
    weights = List.copyOf(weights);
  }

  static ChangeTuning builtIn() {
    return DataFile.builtIn("motion/change.json").read(ChangeTuning.class);
  }
}
