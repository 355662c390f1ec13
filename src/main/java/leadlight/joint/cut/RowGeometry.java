package leadlight.joint.cut;

/**
 * Widths that a row's joints share, in pitches, as the photo shows them.
 *
 * @param leadHalf half the lead's width
 * @param landHalf half the land's width
 * @param ahead from the toe to the land's open end, median of the row
 * @param heelY place of the heel, median of the row, negative
 */
public record RowGeometry(double leadHalf, double landHalf, double ahead, double heelY) {}
