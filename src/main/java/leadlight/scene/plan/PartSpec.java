package leadlight.scene.plan;

/**
 * The row as built.
 *
 * @param connector id of the connector that the row is of; null for a row that is of none
 * @param pin1Right pin 1 is rightmost when the body lies above, so that pins count from the last
 *     land
 * @param pitchMm nominal pitch
 * @param landsAtMm middle of each land along the row, pin 1 at 0
 * @param landWidthMm width of each land
 * @param landLengthMm length of every land
 * @param landAheadMm how far the land runs ahead of the nominal toe
 * @param landCornerMm radius of the land's corners
 * @param leadWidthMm width of every lead
 * @param leadThicknessMm thickness of every lead
 * @param footLengthMm flat part of the lead, toe to heel
 * @param edgeRadiusMm rounding of the lead's upper edges
 */
public record PartSpec(
    String connector,
    boolean pin1Right,
    double pitchMm,
    double[] landsAtMm,
    double[] landWidthMm,
    double landLengthMm,
    double landAheadMm,
    double landCornerMm,
    double leadWidthMm,
    double leadThicknessMm,
    double footLengthMm,
    double edgeRadiusMm) {}
