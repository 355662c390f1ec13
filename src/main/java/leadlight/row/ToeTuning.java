package leadlight.row;

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
 * @param shortestFootMm shortest foot
 * @param longestFootMm longest foot
 * @param landBehindHeelMm usual land behind the heel
 * @param uFall uncertainty of a toe seen as a fall of brightness
 * @param uBand uncertainty of a toe taken from the band
 * @param uGuess uncertainty of a toe not seen
 */
record ToeTuning(
    double openingEdge,
    double farthestMm,
    double nearestMm,
    double usualMm,
    double faintShare,
    double strongShare,
    double widestBand,
    double ridge,
    double ridgeShare,
    double flatStep,
    double bandAheadMm,
    double heelShare,
    double shortestFootMm,
    double longestFootMm,
    double landBehindHeelMm,
    double uFall,
    double uBand,
    double uGuess) {}
