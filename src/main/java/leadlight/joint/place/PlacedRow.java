package leadlight.joint.place;

import java.util.List;
import leadlight.joint.cut.RowGeometry;

/**
 * The row's leads where they are.
 *
 * @param geometry widths as measured
 * @param leads the leads, pin 1 first
 */
public record PlacedRow(RowGeometry geometry, List<PlacedLead> leads) {}
