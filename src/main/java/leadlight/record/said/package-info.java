/**
 * What people and the bench said of joints and boards, and what stands of it.
 *
 * <p>In: words of people, results of tests. Out: immutable values. May use: {@code data}, {@code
 * model}, {@code model.joint}, {@code model.remark}, {@code model.row}.
 */
package leadlight.record.said;
