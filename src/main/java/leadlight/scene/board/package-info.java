/**
 * The board's face and what lies and stands about on it.
 *
 * <p>In: plans. Out: hits. May use: {@code scene.chance}, {@code scene.light}, {@code scene.plan},
 * {@code scene.solids}.
 */
package leadlight.scene.board;
