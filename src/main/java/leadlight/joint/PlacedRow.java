package leadlight.joint;

import java.util.List;

/**
 * The row's leads where they are.
 *
 * @param geometry widths as measured
 * @param leads the leads, pin 1 first
 */
record PlacedRow(RowGeometry geometry, List<PlacedLead> leads) {}
