package leadlight.together;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How several photos of one row are joined: {@code models/motion/join.json}.
 *
 * @param before chance of a fault before any photo was looked at
 * @param together correlation of what two photos of one joint get wrong
 * @param sureCountsMore power of what a photo says that its weight grows with
 * @param leastOwn likeness of what is a row's own from which two photos may show one row
 * @param leastMargin how much less it must be if the row is counted one pin off
 * @param marginOfOwn the same as a share of the likeness
 */
record JoinTuning(
    @JsonProperty(required = true) Figure before,
    @JsonProperty(required = true) Figure together,
    @JsonProperty(required = true) Figure sureCountsMore,
    @JsonProperty(required = true) Figure leastOwn,
    @JsonProperty(required = true) Figure leastMargin,
    @JsonProperty(required = true) Figure marginOfOwn) {

  static JoinTuning builtIn() {
    return DataFile.builtIn("motion/join.json").read(JoinTuning.class);
  }
}
