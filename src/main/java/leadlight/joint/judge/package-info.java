/**
 * From signals to the chance of each finding, and what a joint's picture is fit for.
 *
 * <p>In: signals and fitted data of {@code models/joint}. Out: {@code Evidence}, fitness. May use:
 * {@code data}, {@code joint.cut}, {@code joint.dirt}, {@code joint.signal}, {@code model}, {@code
 * model.joint}, {@code model.remark}, {@code model.row}, {@code numeric}, {@code vision}, {@code
 * vision.blur}.
 */
package leadlight.joint.judge;
