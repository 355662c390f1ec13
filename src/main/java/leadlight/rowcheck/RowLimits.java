package leadlight.rowcheck;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * When a found row is doubted and how another is looked for: {@code models/reader/rows.json}.
 * Strangeness is the second reader's, 0 to 1; the row's is that of its middle joint.
 *
 * @param doubtFrom strangeness from which a row is doubted
 * @param likeBelow strangeness below which a row may be meant
 * @param takenTo strangeness up to which another row is taken in its stead
 * @param unknownMakeFrom chance of an unfamiliar make of photo from which strangeness says little
 * @param strangeIfUnknown strangeness from which a row is doubted there
 * @param sameWithin two rows whose ends are closer than this, pitches, are one
 * @param search how the surroundings of a row are searched
 * @param oddOfMiddle an end joint that many times as strange as the row is odd
 * @param jointTo strangeness up to which a place beyond an end may hold a joint of the row
 * @param jointOfOdd and less than this share of the odd end's
 * @param missingTo and up to here its lead may be missing
 * @param mostSteps most leads that a row is moved along
 * @param ends what lies at and beyond the ends of a row
 */
record RowLimits(
    @JsonProperty(required = true) Figure doubtFrom,
    @JsonProperty(required = true) Figure likeBelow,
    @JsonProperty(required = true) Figure takenTo,
    @JsonProperty(required = true) Figure unknownMakeFrom,
    @JsonProperty(required = true) Figure strangeIfUnknown,
    @JsonProperty(required = true) Figure sameWithin,
    @JsonProperty(required = true) Search search,
    @JsonProperty(required = true) Figure oddOfMiddle,
    @JsonProperty(required = true) Figure jointTo,
    @JsonProperty(required = true) Figure jointOfOdd,
    @JsonProperty(required = true) Figure missingTo,
    @JsonProperty(required = true) Figure mostSteps,
    @JsonProperty(required = true) Ends ends) {

  static RowLimits builtIn() {
    return DataFile.builtIn("reader/rows.json").read(RowLimits.class);
  }

  /**
   * A search about a row, in pitches.
   *
   * @param confidenceFrom the finder's confidence from which a row is searched about
   * @param mostRows how many rows at most
   * @param stepAcross a step along the row
   * @param stepsAcross steps to either side
   * @param stepAlong a step along the leads
   * @param stepsAlong steps to either side
   * @param leavesOpen standard uncertainty that such a move leaves
   * @param source where these come from
   */
  record Search(
      @JsonProperty(required = true) double confidenceFrom,
      @JsonProperty(required = true) int mostRows,
      @JsonProperty(required = true) double stepAcross,
      @JsonProperty(required = true) int stepsAcross,
      @JsonProperty(required = true) double stepAlong,
      @JsonProperty(required = true) int stepsAlong,
      @JsonProperty(required = true) double leavesOpen,
      @JsonProperty(required = true) String source) {}

  /**
   * What counts as metal at the ends of a row, by the share of {@code JointMeter.metal}.
   *
   * @param leadFrom share from which a place beyond an end is one more lead
   * @param runsOnTo how unlike board the strip beyond its land may be: print and traces run on
   * @param boardTo share up to which a place of the row holds no lead and no land
   * @param halfLandPitch half a land's width, pitches: so much must lie in the picture
   * @param mostBeyond how many places beyond either end are looked at
   * @param source where these come from
   */
  record Ends(
      @JsonProperty(required = true) double leadFrom,
      @JsonProperty(required = true) double runsOnTo,
      @JsonProperty(required = true) double boardTo,
      @JsonProperty(required = true) double halfLandPitch,
      @JsonProperty(required = true) int mostBeyond,
      @JsonProperty(required = true) String source) {}
}
