/**
 * What solder does at a found leg: how far it meets the leg, how much land it covers, what stays
 * open.
 *
 * <p>In: a frame and a found leg. Out: measures with uncertainties. May use: {@code leg.find},
 * {@code data}, {@code model}, {@code model.picture}, {@code vision}.
 */
package leadlight.leg.measure;
