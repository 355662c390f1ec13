/**
 * Scenes of anchor legs: drawn, soldered, rendered, with their truth.
 *
 * <p>In: a {@code LegMix} and a seed. Out: {@code LegScene}s. May use: {@code scene.board}, {@code
 * scene.camera}, {@code scene.chance}, {@code scene.draw}, {@code scene.light}, {@code scene.plan},
 * {@code scene.render}, {@code scene.solids}, {@code connector}, {@code data}, {@code model}.
 */
package leadlight.scene.legs;
