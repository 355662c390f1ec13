package leadlight.together;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Logistic;
import leadlight.register.Overlay;
import leadlight.register.RegisterTuning;
import leadlight.register.Registrar;
import leadlight.vision.Frame;

/** What changed at each joint between a row as it was set down and the row after soldering. */
final class Placed {

  private final ChangeTuning tuning = ChangeTuning.builtIn();

  /**
   * What was found.
   *
   * @param oneRow whether the two show one row, pin for pin
   * @param likeness of what is this row's own, -1 to 1
   * @param noise how far apart light alone leaves the two, in spreads of the row's light
   * @param signals of each joint, pin 1 first
   */
  record Compared(boolean oneRow, double likeness, double noise, List<double[]> signals) {}

  /** Compares. */
  Compared compare(
      Frame after,
      RowOutcome.Found afterRow,
      Frame before,
      RowOutcome.Found beforeRow,
      RowSpec spec) {
    Registrar registrar = new Registrar(RegisterTuning.builtIn(), after, afterRow, spec.pitchMm());
    Overlay overlay = registrar.overlay(before, beforeRow.mmToPx());
    boolean oneRow =
        overlay.ownLikeness() >= tuning.leastOwn().value()
            && SamePins.are(overlay, afterRow, beforeRow);
    List<LandZones> zones =
        LandZones.of(
            afterRow.leads(),
            overlay.fixed().grid(),
            spec.pitchMm(),
            afterRow.mmToPx().inverse(),
            tuning.zones());
    SteadyLight light = new SteadyLight(overlay, zones, tuning.light());
    ChangeSignals signals = new ChangeSignals(overlay, light, tuning.flat().value());
    return new Compared(
        oneRow,
        overlay.ownLikeness(),
        light.noise() / light.spread(),
        zones.stream().map(signals::of).toList());
  }

  /** Whether light alone differs by more than was ever learned from. */
  boolean otherLight(Compared compared) {
    return compared.noise() > tuning.mostNoise().value();
  }

  /** Chance that solder came, by the signals of a joint; unknown where a zone does not show. */
  OptionalDouble soldered(double[] signals) {
    if (Arrays.stream(signals).anyMatch(Double::isNaN)) {
      return OptionalDouble.empty();
    }
    double sum = tuning.offset().value();
    for (int i = 0; i < signals.length; i++) {
      sum += tuning.weights().get(i) * Math.log(Math.max(0, signals[i]) + tuning.floor().value());
    }
    return OptionalDouble.of(Logistic.of(sum));
  }

  /** Whether a joint is as it was set down. */
  boolean unchanged(double soldered) {
    return soldered <= tuning.unchangedTo().value();
  }

  /** Whether solder surely came. */
  boolean changed(double soldered) {
    return soldered >= tuning.changedFrom().value();
  }
}
