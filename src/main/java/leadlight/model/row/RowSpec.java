package leadlight.model.row;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.model.Checks;

/**
 * What is known of a row before the photo is looked at.
 *
 * @param connectorId id of the connector model, or "plain" for leads and pitch given by hand
 * @param lands the lands in order, pin 1 first, {@code uMm} ascending from 0; at least 3
 * @param pitchMm nominal pitch: the commonest distance between neighbours
 * @param leadWidthMm width of a lead, if known
 * @param pin1Reversed true if pin 1 is the rightmost when the body is held above the leads
 */
public record RowSpec(
    String connectorId,
    List<LandSpec> lands,
    double pitchMm,
    OptionalDouble leadWidthMm,
    boolean pin1Reversed) {

  /** Drawings round to a hundredth of a millimetre. */
  private static final double SAME_PITCH = 0.02;

  /** Refuses fewer than three lands, a pitch of zero or less and lands out of order. */
  public RowSpec {
    lands = List.copyOf(lands);
    Checks.atLeast("number of lands", lands.size(), 3);
    Checks.above("pitchMm", pitchMm, 0);
    for (int i = 1; i < lands.size(); i++) {
      if (lands.get(i).uMm() <= lands.get(i - 1).uMm()) {
        throw new IllegalArgumentException("lands must ascend along the row at pin " + (i + 1));
      }
    }
  }

  /** An evenly pitched row without a connector model. */
  public static RowSpec plain(
      int leads, double pitchMm, OptionalDouble leadWidthMm, OptionalDouble landWidthMm) {
    List<LandSpec> lands = new ArrayList<>();
    for (int i = 0; i < leads; i++) {
      lands.add(
          new LandSpec(
              i + 1, Integer.toString(i + 1), i * pitchMm, landWidthMm, OptionalDouble.empty()));
    }
    return new RowSpec("plain", lands, pitchMm, leadWidthMm, false);
  }

  /** The same row with pin 1 at the other end. */
  public RowSpec reversed() {
    return new RowSpec(connectorId, lands, pitchMm, leadWidthMm, !pin1Reversed);
  }

  /** Number of leads. */
  public int leads() {
    return lands.size();
  }

  /** Distance from the first land's middle to the last's, millimetres. */
  public double spanMm() {
    return lands.get(lands.size() - 1).uMm() - lands.get(0).uMm();
  }

  /** Whether all leads stand one pitch apart. */
  public boolean even() {
    for (int i = 1; i < lands.size(); i++) {
      double step = lands.get(i).uMm() - lands.get(i - 1).uMm();
      if (Math.abs(step / pitchMm - 1) > SAME_PITCH) {
        return false;
      }
    }
    return true;
  }
}
