package leadlight.photo;

import java.util.OptionalDouble;

/**
 * What a picture as a whole is fit for, measured without knowing what it shows.
 *
 * @param edgeBlurPx sigma of the strongest edges, in pixels (see {@link
 *     leadlight.vision.BlurMeter}); absent if there are no clear edges
 * @param noise standard deviation in grey levels (see {@link leadlight.vision.ToneMeter#noise})
 * @param burntOutShare share of the pixels of 250 grey levels or more, where the picture holds
 *     nothing
 * @param blackShare share of the pixels of 5 grey levels or less
 * @param contrast grey levels from the 5 % to the 95 % quantile
 * @param resolvedShare 0 to 1: about how much of the pixel count the edges bear out. Stretched
 *     pictures and soft focus lower it alike; the two cannot be told apart. Absent with the blur
 */
public record PictureFacts(
    OptionalDouble edgeBlurPx,
    double noise,
    double burntOutShare,
    double blackShare,
    double contrast,
    OptionalDouble resolvedShare) {}
