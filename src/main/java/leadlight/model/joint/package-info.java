/**
 * A joint: as measured, as each opinion sees it, as graded.
 *
 * <p>In: numbers. Out: immutable values. May use: {@code model}, {@code model.picture}, {@code
 * model.remark}, {@code model.row}.
 */
package leadlight.model.joint;
