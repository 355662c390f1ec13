/**
 * From a row to what each joint measures.
 *
 * <p>In: a frame and a found row. Out: {@code Joint}s. May use: {@code model}, {@code vision},
 * {@code data}.
 */
package leadlight.joint;
