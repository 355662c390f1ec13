package leadlight.enrol.learn;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How a bench is learned and from where on it counts: {@code models/enrol/enrol.json}.
 *
 * @param photosFrom photos of each kind, sound and unsoldered, from which a bench vouches
 * @param promise share of unsoldered joints that may pass, at 95 %, for a bench to vouch
 * @param soundFrom sound joints from which a bench calls
 * @param pullOfPicture how strongly the weights of the small pictures are pulled to nothing
 * @param pullOfGeneral how strongly the general opinion's weight is pulled to one
 * @param generalTo log odds to which the general opinion counts
 * @param margin how far borders lie beyond the last joint shown, standard deviations of its kind
 * @param likeTo distance from the nearest joint shown, of the greatest between the photos shown, up
 *     to which a joint is like them
 * @param rowLikeTo the same of a photo's middle joint
 * @param scaleTo ratio of pixels a pitch up to which the scale is that of the bench
 * @param blurTo edge blur beyond that of the photos shown, pitches, up to which it is the bench's
 * @param lightTo difference of the row's levels of light from those shown, of 255
 * @param sameTo mean difference of two photos' shown joints up to which they are one
 * @param sameRowTo mean difference of two rows' mean joints up to which they are one photo
 * @param checksFrom photos of the check board that set the limits of its charts
 * @param swappedTo AUC of a general opinion that counts, up to which kinds look swapped
 * @param missed chance that a promise does not hold
 * @param leastSpread spread of a block of numbers below which it is not blown up
 * @param mostSteps steps after which a line that still moves is refused
 * @param still greatest move of a weight at which a line stands still
 */
public record EnrolTuning(
    @JsonProperty(required = true) Figure photosFrom,
    @JsonProperty(required = true) Figure promise,
    @JsonProperty(required = true) Figure soundFrom,
    @JsonProperty(required = true) Figure pullOfPicture,
    @JsonProperty(required = true) Figure pullOfGeneral,
    @JsonProperty(required = true) Figure generalTo,
    @JsonProperty(required = true) Figure margin,
    @JsonProperty(required = true) Figure likeTo,
    @JsonProperty(required = true) Figure rowLikeTo,
    @JsonProperty(required = true) Figure scaleTo,
    @JsonProperty(required = true) Figure blurTo,
    @JsonProperty(required = true) Figure lightTo,
    @JsonProperty(required = true) Figure sameTo,
    @JsonProperty(required = true) Figure sameRowTo,
    @JsonProperty(required = true) Figure checksFrom,
    @JsonProperty(required = true) Figure swappedTo,
    @JsonProperty(required = true) Figure missed,
    @JsonProperty(required = true) Figure leastSpread,
    @JsonProperty(required = true) Figure mostSteps,
    @JsonProperty(required = true) Figure still) {

  public static EnrolTuning builtIn() {
    return DataFile.builtIn("enrol/enrol.json").read(EnrolTuning.class);
  }

  /**
   * The general opinion as it counts, in learning as in judging: up to a border, since it may be
   * badly wrong on a bench.
   *
   * @param logOdds that nothing holds the joint
   */
  public double general(double logOdds) {
    return Math.max(-generalTo.value(), Math.min(generalTo.value(), logOdds));
  }
}
