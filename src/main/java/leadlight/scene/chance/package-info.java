/**
 * Seeded noise and seeded choices.
 *
 * <p>In: seeds. Out: numbers. May use: the JDK alone.
 */
package leadlight.scene.chance;
