package leadlight.scene.render;

import java.awt.image.BufferedImage;
import leadlight.scene.plan.SceneSpec;

/**
 * A rendered scene.
 *
 * @param spec what it was made from
 * @param picture 8-bit colour
 * @param truth exact places and verdicts
 */
public record Scene(SceneSpec spec, BufferedImage picture, Truth truth) {}
