package leadlight.register;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How photos are laid over each other: {@code models/motion/register.json}.
 *
 * @param beyondEndsPitch board beyond the first and last lead that is looked at, pitches
 * @param behindHeelPitch part behind the heels, pitches
 * @param aheadPitch board ahead of the lands, pitches
 * @param coarsePitchPx pixels a pitch of the first search
 * @param middlePitchPx of the next level
 * @param finePitchPx most pixels a pitch of the last level
 * @param reachPitch how far the camera may have moved, pitches
 * @param evenPitch half side of the surroundings that light is evened against, pitches
 * @param floorLevels least spread of light around a pixel, grey levels
 * @param faintStep step of evened light from pixel to pixel that is noise, spreads
 * @param outlineFloor least spread of the outlines around a pixel, of a natural logarithm
 * @param rounds steps at each level
 * @param mostStretch how many times larger or smaller steps may make a map; beyond it they have run
 *     away, as over a photo of something else
 * @param mostShrink photo pixels a grid pixel beyond which a photo is shrunk first
 * @param nearlyFocus ratio of squared contrast up to which focus is left alone
 * @param alikeFocus the same up to which the softer picture needs no more softening
 * @param focusSteps softenings at most
 * @param darkLevels light below which a pixel says little of exposure, grey levels
 */
public record RegisterTuning(
    @JsonProperty(required = true) Figure beyondEndsPitch,
    @JsonProperty(required = true) Figure behindHeelPitch,
    @JsonProperty(required = true) Figure aheadPitch,
    @JsonProperty(required = true) Figure coarsePitchPx,
    @JsonProperty(required = true) Figure middlePitchPx,
    @JsonProperty(required = true) Figure finePitchPx,
    @JsonProperty(required = true) Figure reachPitch,
    @JsonProperty(required = true) Figure evenPitch,
    @JsonProperty(required = true) Figure floorLevels,
    @JsonProperty(required = true) Figure faintStep,
    @JsonProperty(required = true) Figure outlineFloor,
    @JsonProperty(required = true) Figure rounds,
    @JsonProperty(required = true) Figure mostStretch,
    @JsonProperty(required = true) Figure mostShrink,
    @JsonProperty(required = true) Figure nearlyFocus,
    @JsonProperty(required = true) Figure alikeFocus,
    @JsonProperty(required = true) Figure focusSteps,
    @JsonProperty(required = true) Figure darkLevels) {

  /** The built-in tuning. */
  public static RegisterTuning builtIn() {
    return DataFile.builtIn("motion/register.json").read(RegisterTuning.class);
  }
}
