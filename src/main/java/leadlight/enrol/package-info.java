/**
 * A bench that was enrolled: what its own known joints look like, and what follows for a new photo.
 *
 * <p>In: small pictures of joints whose state is known. Out: an enrolment, and a bench's opinion on
 * the joints of a photo. May use: {@code model}, {@code data}.
 */
package leadlight.enrol;
