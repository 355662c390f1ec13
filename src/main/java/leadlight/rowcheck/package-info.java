/**
 * Whether a found row is where leads are, and counted from its true first lead: the second reader
 * and the straightened joints are asked before anything is graded.
 *
 * <p>In: a found row, its frame. Out: the row, another one, or a doubt. May use: {@code data},
 * {@code joint}, {@code model}, {@code model.joint}, {@code model.remark}, {@code model.result},
 * {@code model.row}, {@code photo}, {@code reader}, {@code row}, {@code vision}.
 */
package leadlight.rowcheck;
