/**
 * From a row to what each joint measures.
 *
 * <p>In: a frame and a found row. Out: {@code Joint}s. May use: {@code joint.cut}, {@code
 * joint.dirt}, {@code joint.judge}, {@code joint.place}, {@code joint.signal}, {@code model},
 * {@code model.joint}, {@code model.picture}, {@code model.remark}, {@code model.row}, {@code
 * numeric}, {@code vision}.
 */
package leadlight.joint;
