/**
 * Draws plans from a mix: the same mix, seed and number give the same plan.
 *
 * <p>In: a {@code SceneMix} and a seed. Out: {@code SceneSpec}s. May use: {@code scene.camera},
 * {@code scene.chance}, {@code scene.plan}, {@code connector}, {@code data}, {@code model}, {@code
 * model.row}.
 */
package leadlight.scene.draw;
