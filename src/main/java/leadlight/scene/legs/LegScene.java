package leadlight.scene.legs;

import java.awt.image.BufferedImage;

/**
 * A rendered scene of anchor legs.
 *
 * @param spec what it was made from
 * @param picture 8-bit colour
 * @param truth exact places and verdicts
 */
public record LegScene(LegSceneSpec spec, BufferedImage picture, LegSceneTruth truth) {}
