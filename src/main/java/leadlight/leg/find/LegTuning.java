package leadlight.leg.find;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * Settings of the search for legs: {@code models/legs/search.json}.
 *
 * @param searchLengthPx shortest land of an octave in the shrunk picture, pixels
 * @param fineLengthPx land in the picture in which places are refined, pixels
 * @param faintSlope slope that counts half, grey levels a pixel
 * @param scaleStep step between scales, share
 * @param angleStepRad step between turns
 * @param hitFrom share of an outline that must be an edge for a try
 * @param foundFrom the same for a leg
 * @param apartMm distance within which two outlines are one
 * @param mostHits outlines kept
 * @param stretch how much a land may differ from its stated size, share
 * @param leastOfPicture shortest land, share of the picture's longer side
 * @param mostOfPicture longest
 * @param leastScale smallest scale of a pattern, share of that at which it fills the longer side
 * @param mostScale largest
 * @param mostLegs legs looked at where their number is not known
 * @param toldApartTo score turned half round against the best, up to which legs have numbers
 * @param otherShape weight of an outline that another leg of the part should have
 * @param wellFrom match from which a leg's own place counts; others are placed by these
 * @param halfShown weight of the better half of an outline on the component side, where the shell
 *     may hide the other
 * @param likeBest score against the best from which a larger outline, or another leg, counts
 * @param together how all legs of a part are placed at once
 */
public record LegTuning(
    @JsonProperty(required = true) Figure searchLengthPx,
    @JsonProperty(required = true) Figure fineLengthPx,
    @JsonProperty(required = true) Figure faintSlope,
    @JsonProperty(required = true) Figure scaleStep,
    @JsonProperty(required = true) Figure angleStepRad,
    @JsonProperty(required = true) Figure hitFrom,
    @JsonProperty(required = true) Figure foundFrom,
    @JsonProperty(required = true) Figure apartMm,
    @JsonProperty(required = true) int mostHits,
    @JsonProperty(required = true) Figure stretch,
    @JsonProperty(required = true) Figure leastOfPicture,
    @JsonProperty(required = true) Figure mostOfPicture,
    @JsonProperty(required = true) Figure leastScale,
    @JsonProperty(required = true) Figure mostScale,
    @JsonProperty(required = true) int mostLegs,
    @JsonProperty(required = true) Figure toldApartTo,
    @JsonProperty(required = true) Figure otherShape,
    @JsonProperty(required = true) Figure wellFrom,
    @JsonProperty(required = true) Figure halfShown,
    @JsonProperty(required = true) Figure likeBest,
    @JsonProperty(required = true) Together together) {

  /**
   * How all legs of a part are placed at once.
   *
   * @param lengthPx length of a land in the picture in which they are
   * @param marginMm by how much the mask usually stands back from the copper
   * @param marginSpreadMm its spread
   * @param skew spread of the ratio of the scales along and across, natural logarithm
   * @param ownSpreadMm how far a leg may lie beside its place in the part
   * @param holds share of an outline that a deviation of one spread is worth
   * @param firstStepPx first step of the search
   * @param lastStepPx last
   * @param finer ratio of a step to the next
   * @param least match of all placed at once, against that of each alone, from which they count
   */
  public record Together(
      @JsonProperty(required = true) Figure lengthPx,
      @JsonProperty(required = true) Figure marginMm,
      @JsonProperty(required = true) Figure marginSpreadMm,
      @JsonProperty(required = true) Figure skew,
      @JsonProperty(required = true) Figure ownSpreadMm,
      @JsonProperty(required = true) Figure holds,
      @JsonProperty(required = true) Figure firstStepPx,
      @JsonProperty(required = true) Figure lastStepPx,
      @JsonProperty(required = true) Figure finer,
      @JsonProperty(required = true) Figure least) {}

  public static LegTuning builtIn() {
    return DataFile.builtIn("legs/search.json").read(LegTuning.class);
  }
}
