/**
 * Where each lead is, how surely, and how far it stands off its land.
 *
 * <p>In: straightened patches. Out: placed leads. May use: {@code data}, {@code joint.cut}, {@code
 * model}, {@code model.row}, {@code numeric}, {@code vision}.
 */
package leadlight.joint.place;
