/**
 * Lamps, shadows and shine: from what a line of sight meets to the light it brings back.
 *
 * <p>In: surfaces and lamps. Out: linear light. May use: {@code scene.camera}, {@code
 * scene.chance}, {@code scene.plan}.
 */
package leadlight.scene.light;
