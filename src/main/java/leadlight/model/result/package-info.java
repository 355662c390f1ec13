/**
 * All that is said of one photo, and of what was seen besides.
 *
 * <p>In: graded joints. Out: immutable values. May use: {@code model}, {@code model.joint}, {@code
 * model.picture}, {@code model.remark}, {@code model.row}.
 */
package leadlight.model.result;
