package leadlight.photo;

import java.util.OptionalDouble;

/**
 * What a picture as a whole is fit for, measured without knowing what it shows.
 *
 * @param edgeBlurPx sigma of the strongest edges, in pixels (see {@link
 *     leadlight.vision.blur.BlurMeter}); absent if there are no clear edges. It tells the
 *     resolution that is really there: a sharp picture has about 0.5, and pixels that a camera or
 *     program invented by stretching widen edges just as soft focus does. The two are not told
 *     apart
 * @param noise standard deviation in grey levels (see {@link
 *     leadlight.vision.blur.ToneMeter#noise})
 * @param burntOutShare share of the pixels of 250 grey levels or more, where the picture holds
 *     nothing
 * @param blackShare share of the pixels of 5 grey levels or less
 * @param contrast grey levels from the 5 % to the 95 % quantile
 */
public record PictureFacts(
    OptionalDouble edgeBlurPx,
    double noise,
    double burntOutShare,
    double blackShare,
    double contrast) {}
