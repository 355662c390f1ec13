/**
 * From a plan to a picture with its truth and the verdicts it deserves.
 *
 * <p>In: a {@code SceneSpec}. Out: {@code Scene}s. May use: {@code scene.board}, {@code
 * scene.camera}, {@code scene.chance}, {@code scene.light}, {@code scene.plan}, {@code
 * scene.solids}, {@code model}.
 */
package leadlight.scene.render;
