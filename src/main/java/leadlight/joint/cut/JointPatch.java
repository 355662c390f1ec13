package leadlight.joint.cut;

import leadlight.model.row.Lead;

/**
 * One joint, straightened on {@link PatchGrid}; planes in the photo's own levels, 0 to 255.
 *
 * @param lead the lead
 * @param light mean of the three colours, x = 0 on the lead's middle
 * @param redGreen red less green, same raster
 * @param yellowBlue mean of red and green, less blue, same raster
 * @param landLight like {@code light}, x = 0 on the land's middle
 * @param landRedGreen like {@code redGreen}, on the land's middle
 * @param landYellowBlue like {@code yellowBlue}, on the land's middle
 * @param offset lead's middle less land's middle at the toe, pitches, positive towards pin N
 * @param heelOffset the same at the heel
 * @param ahead from the toe to the land's open end, pitches
 * @param heelY place of the heel, pitches, negative
 * @param landHeelY place of the land's end at the body, pitches, negative
 * @param pitchPx local pitch
 * @param acrossX one pitch along the row, x in the photo
 * @param acrossY one pitch along the row, y in the photo
 */
public record JointPatch(
    Lead lead,
    float[] light,
    float[] redGreen,
    float[] yellowBlue,
    float[] landLight,
    float[] landRedGreen,
    float[] landYellowBlue,
    double offset,
    double heelOffset,
    double ahead,
    double heelY,
    double landHeelY,
    double pitchPx,
    double acrossX,
    double acrossY) {}
