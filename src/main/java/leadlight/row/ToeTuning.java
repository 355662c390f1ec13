package leadlight.row;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Figures for locating toes and heels. Distances with {@code Mm} are on the part, the others in
 * pitches; shares are of the strongest change in the range searched.
 *
 * @param openingEdge half of what the mask opening shows beyond the land
 * @param farthestMm longest land ahead of a toe
 * @param nearestMm shortest land ahead of a toe
 * @param usualMm land ahead of the toe where nothing shows
 * @param faintShare weakest change that counts
 * @param strongShare weakest change that counts as the fillet's band
 * @param widestBand widest band that a fillet shows
 * @param ridge widest highlight along the toe's edge
 * @param ridgeShare how much stronger the fall behind it must be than the highlight
 * @param flatStep change in grey levels below which the land is taken for bare and flat
 * @param bandAheadMm from the toe to the fillet's band where only the band shows
 * @param heelShare weakest change that counts as the heel
 * @param shortestLead least that shows of a lead between its body and its toe
 * @param shortestFootMm shortest foot
 * @param longestFootMm longest foot
 * @param landBehindHeelMm usual land behind the heel
 * @param uFall uncertainty of a toe seen as a fall of brightness
 * @param uBand uncertainty of a toe taken from the band
 * @param uGuess uncertainty of a toe not seen
 */
record ToeTuning(
    @JsonProperty(required = true) double openingEdge,
    @JsonProperty(required = true) double farthestMm,
    @JsonProperty(required = true) double nearestMm,
    @JsonProperty(required = true) double usualMm,
    @JsonProperty(required = true) double faintShare,
    @JsonProperty(required = true) double strongShare,
    @JsonProperty(required = true) double widestBand,
    @JsonProperty(required = true) double ridge,
    @JsonProperty(required = true) double ridgeShare,
    @JsonProperty(required = true) double flatStep,
    @JsonProperty(required = true) double bandAheadMm,
    @JsonProperty(required = true) double heelShare,
    @JsonProperty(required = true) double shortestLead,
    @JsonProperty(required = true) double shortestFootMm,
    @JsonProperty(required = true) double longestFootMm,
    @JsonProperty(required = true) double landBehindHeelMm,
    @JsonProperty(required = true) double uFall,
    @JsonProperty(required = true) double uBand,
    @JsonProperty(required = true) double uGuess) {}
