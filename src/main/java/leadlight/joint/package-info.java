/**
 * From a row to what each joint measures.
 *
 * <p>In: a frame and a found row. Out: {@code Joint}s. May use: {@code model}, {@code vision},
 * Jackson for its judgement data.
 */
package leadlight.joint;
