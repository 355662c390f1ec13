package leadlight.motion;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How a nudge is read: {@code models/motion/nudge.json}. Pitches are the row's nominal ones.
 *
 * @param leastLikeness likeness from which two photos show one row from one place
 * @param leastOwn the same of what is this row's own, which a row laid one pin off does not have
 * @param reachPitch how far a lead may be pushed
 * @param smallPx shift below which the foot is measured by its light alone
 * @param agreeShare how far the two ways of measuring may lie apart
 * @param mostLevels difference of light beyond which a pixel does not count more
 * @param uncoveredLevels the same of land that a lead uncovers, which was guessed
 * @param besidePitch how far beside a foot its land's light is taken from
 * @param rimPitch how far a lead's edge is blurred
 * @param mostGain how far light may have changed at a lead, either way
 * @param rounds steps of the fine measurement
 * @param pickLevels change of light that counts, grey levels
 * @param pickSpreads the same, in spreads of the photo's own change
 * @param leastShare changed pixels that a pick needs, square pitches
 * @param leastStrip votes that a pick needs, pitches along it
 * @param pickHalfPitch half the width of a pick near its tip
 * @param shades which of the changed pixels, sorted by shade, may show the pick's own: shares
 * @param shadesSource why these
 * @param pickTaper share of its width that a pick gains a pitch
 * @param leastVote how much a row must speak for a pick to belong to it, 0 to 1
 * @param leastShaft how much the rows over the open board must, on the mean
 * @param offTipPitch distance from a pick's tip to the middle of the lead that it touches
 * @param notTouchedPitch how far from that distance a tip may lie
 * @param fromPickPitch standard uncertainty of a shift beside a pick
 * @param relative the same of a large shift, as a share of it
 * @param loosenedFromUm shift that tells a loose lead from a soldered one, micrometres
 * @param firmToUm what a firm lead may have moved at most
 * @param clearlyMoved difference of light if moved, as a share of that at rest, below which it
 *     moved
 * @param clearlyFirm the same above which it did not
 * @param usualWidthPitch width of a lead whose width nobody told
 * @param sided one-sided 95 % point of the normal distribution
 */
record NudgeTuning(
    @JsonProperty(required = true) Figure leastLikeness,
    @JsonProperty(required = true) Figure leastOwn,
    @JsonProperty(required = true) Figure reachPitch,
    @JsonProperty(required = true) Figure smallPx,
    @JsonProperty(required = true) Figure agreeShare,
    @JsonProperty(required = true) Figure mostLevels,
    @JsonProperty(required = true) Figure uncoveredLevels,
    @JsonProperty(required = true) Figure besidePitch,
    @JsonProperty(required = true) Figure rimPitch,
    @JsonProperty(required = true) Figure mostGain,
    @JsonProperty(required = true) Figure rounds,
    @JsonProperty(required = true) Figure pickLevels,
    @JsonProperty(required = true) Figure pickSpreads,
    @JsonProperty(required = true) Figure leastShare,
    @JsonProperty(required = true) Figure leastStrip,
    @JsonProperty(required = true) Figure pickHalfPitch,
    @JsonProperty(required = true) List<Double> shades,
    @JsonProperty(required = true) String shadesSource,
    @JsonProperty(required = true) Figure pickTaper,
    @JsonProperty(required = true) Figure leastVote,
    @JsonProperty(required = true) Figure leastShaft,
    @JsonProperty(required = true) Figure offTipPitch,
    @JsonProperty(required = true) Figure notTouchedPitch,
    @JsonProperty(required = true) Figure fromPickPitch,
    @JsonProperty(required = true) Figure relative,
    @JsonProperty(required = true) Figure loosenedFromUm,
    @JsonProperty(required = true) Figure firmToUm,
    @JsonProperty(required = true) Figure clearlyMoved,
    @JsonProperty(required = true) Figure clearlyFirm,
    @JsonProperty(required = true) Figure usualWidthPitch,
    @JsonProperty(required = true) Figure sided) {

  /** Copies the list. */
  NudgeTuning {
    shades = List.copyOf(shades);
  }

  static NudgeTuning builtIn() {
    return DataFile.builtIn("motion/nudge.json").read(NudgeTuning.class);
  }
}
