/**
 * What a small trained network reads from the picture of a found leg.
 *
 * <p>In: a frame and a found leg. Out: how likely each reach of solder is. May use: {@code
 * leg.find}, {@code data}, {@code model}, {@code model.picture}, {@code numeric}, {@code vision}.
 */
package leadlight.leg.read;
