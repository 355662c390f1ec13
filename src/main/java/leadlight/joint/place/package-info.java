/**
 * Where each lead is, how surely, and how far it stands off its land: the toe is placed here.
 *
 * <p>In: straightened patches. Out: placed leads. May use: {@code joint.cut}, {@code data}, {@code
 * model}, {@code model.row}, {@code vision}.
 */
package leadlight.joint.place;
