/**
 * Leads, solder, body, raised lands: their shapes.
 *
 * <p>In: plans. Out: heights, normals, hits. May use: {@code scene.chance}, {@code scene.light},
 * {@code scene.plan}.
 */
package leadlight.scene.solids;
