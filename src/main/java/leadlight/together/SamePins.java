package leadlight.together;

import java.util.Comparator;
import leadlight.model.Homography;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.register.Overlay;

/** Whether two photos' own numberings give each lead the same pin. */
final class SamePins {

  private static final double HALF_A_PITCH = 0.5;

  private SamePins() {}

  static boolean are(Overlay overlay, RowOutcome.Found row, RowOutcome.Found there) {
    Homography toOther = overlay.toMoving(row.mmToPx().after(overlay.fixed().grid().toMm()));
    double[] off =
        row.leads().stream()
            .sorted(Comparator.comparingInt(Lead::pin))
            .mapToDouble(
                lead ->
                    toOther
                        .map(lead.landToePx().x(), lead.landToePx().y())
                        .distanceTo(there.leads().get(lead.pin() - 1).landToePx()))
            .sorted()
            .toArray();
    return off[off.length / 2] < HALF_A_PITCH * there.pitchPx();
  }
}
