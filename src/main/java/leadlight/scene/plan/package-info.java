/**
 * Everything a scene is made of, as values; the same plan gives the same bytes.
 *
 * <p>In: numbers. Out: immutable values. May use: {@code scene.camera}.
 */
package leadlight.scene.plan;
