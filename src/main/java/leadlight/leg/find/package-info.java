/**
 * Where the lands of anchor legs lie in a photo: outlines, patterns, all legs of a part at once.
 *
 * <p>In: a frame and a {@code LegRequest}. Out: {@code FoundLeg}s. May use: {@code data}, {@code
 * model}, {@code model.picture}, {@code model.remark}, {@code vision}.
 */
package leadlight.leg.find;
