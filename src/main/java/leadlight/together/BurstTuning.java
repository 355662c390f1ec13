package leadlight.together;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How frames of a fixed microscope are stacked: {@code models/motion/burst.json}.
 *
 * @param leastFrames fewer are no burst
 * @param mostFrames more are not taken
 * @param leastLikeness from which two frames show one view
 * @param leastOwn the same of what is this row's own
 * @param mostShiftPitch how far the row may lie off in a frame
 * @param quietPx sigma by which noise of pixels is smoothed before the sharpest frame is chosen
 * @param quietPitch sigma by which noise is smoothed before sharpness is looked at
 * @param placePitch sigma of the surroundings whose sharpness counts for a place
 * @param power of the squared contrast that a frame's weight grows with
 * @param floor squared contrast that is no sign of sharpness, square grey levels
 */
record BurstTuning(
    @JsonProperty(required = true) Figure leastFrames,
    @JsonProperty(required = true) Figure mostFrames,
    @JsonProperty(required = true) Figure leastLikeness,
    @JsonProperty(required = true) Figure leastOwn,
    @JsonProperty(required = true) Figure mostShiftPitch,
    @JsonProperty(required = true) Figure quietPx,
    @JsonProperty(required = true) Figure quietPitch,
    @JsonProperty(required = true) Figure placePitch,
    @JsonProperty(required = true) Figure power,
    @JsonProperty(required = true) Figure floor) {

  static BurstTuning builtIn() {
    return DataFile.builtIn("motion/burst.json").read(BurstTuning.class);
  }
}
