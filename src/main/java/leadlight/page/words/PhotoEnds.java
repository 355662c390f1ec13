package leadlight.page.words;

import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.text.Messages;

/**
 * Where a pin is, counted from both ends of the row as the photo shows it: from left and right, or,
 * where the row stands upright in the photo, from top and bottom.
 *
 * @param leads number of leads
 * @param upright true if the row runs rather up and down
 * @param pin1First true if pin 1 is at the left, or at the top
 */
public record PhotoEnds(int leads, boolean upright, boolean pin1First) {

  public static PhotoEnds of(RowOutcome.Found row) {
    List<Lead> leads = row.leads();
    PointPx first = leads.get(0).landToePx();
    PointPx last = leads.get(leads.size() - 1).landToePx();
    double across = last.x() - first.x();
    double down = last.y() - first.y();
    boolean upright = Math.abs(down) > Math.abs(across);
    return new PhotoEnds(leads.size(), upright, (upright ? down : across) >= 0);
  }

  /** "in the photo no. 3 from the left, 17 from the right". */
  public String words(int pin, Messages words) {
    int first = pin1First ? pin : leads + 1 - pin;
    return words.get(upright ? "page.pin.ends.upright" : "page.pin.ends", first, leads + 1 - first);
  }
}
