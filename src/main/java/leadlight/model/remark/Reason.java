package leadlight.model.remark;

import leadlight.model.Checks;

/**
 * One signal that speaks for a finding.
 *
 * @param signal its name, as "toe_band_edges"; people read it by {@code leadlight.text}
 * @param value its value at this joint
 * @param usual its median over sound joints
 * @param points how much more it speaks for the finding than its usual value does, log odds
 */
public record Reason(String signal, double value, double usual, double points) {

  /** Refuses numbers that are not finite. */
  public Reason {
    Checks.finite(signal, value);
    Checks.finite("usual", usual);
    Checks.finite("points", points);
  }
}
