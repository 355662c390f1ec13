package leadlight.summary.day;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Verdict;
import leadlight.record.said.RecordedJoint;

/** How often each pin of one kind of row fails, over the photos of a run. */
public final class PinStrip {

  /**
   * One pin.
   *
   * @param pin its number
   * @param defects photos in which it is a defect
   * @param unjudged photos in which it is unjudged
   * @param of photos
   */
  public record Pin(int pin, int defects, int unjudged, int of) {}

  private final String connector;
  private final int leads;
  private final List<int[]> counts = new ArrayList<>();

  PinStrip(String connector, int leads) {
    this.connector = connector;
    this.leads = leads;
  }

  void add(List<RecordedJoint> joints) {
    for (RecordedJoint joint : joints) {
      while (counts.size() < joint.pin()) {
        counts.add(new int[3]);
      }
      int[] count = counts.get(joint.pin() - 1);
      count[0] += joint.verdict() == Verdict.DEFECT ? 1 : 0;
      count[1] += joint.verdict() == Verdict.UNJUDGED ? 1 : 0;
      count[2]++;
    }
  }

  /** Id of the connector. */
  public String connector() {
    return connector;
  }

  /** Number of leads. */
  public int leads() {
    return leads;
  }

  /** The pins in order. */
  public List<Pin> pins() {
    List<Pin> pins = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      int[] count = counts.get(i);
      pins.add(new Pin(i + 1, count[0], count[1], count[2]));
    }
    return pins;
  }

  /** The pins in order, at most so many together. */
  public List<List<Pin>> parts(int most) {
    List<Pin> pins = pins();
    List<List<Pin>> parts = new ArrayList<>();
    for (int i = 0; i < pins.size(); i += most) {
      parts.add(pins.subList(i, Math.min(i + most, pins.size())));
    }
    return parts;
  }

  /** The most defects that any pin has. */
  public int worst() {
    return counts.stream().mapToInt(count -> count[0]).max().orElse(0);
  }
}
