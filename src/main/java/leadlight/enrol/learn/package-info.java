/**
 * A version of an enrolment: what its joints look like in numbers, and what is learned of them.
 *
 * <p>In: small pictures of joints whose state is known. Out: {@code Enrolment}s. May use: {@code
 * data}, {@code model}, {@code model.picture}.
 */
package leadlight.enrol.learn;
