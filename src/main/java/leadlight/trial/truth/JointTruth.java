package leadlight.trial.truth;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.PointPx;

/**
 * What is true of one joint of a rendered picture.
 *
 * @param pin 1 to N
 * @param toePx middle of the lead's open end, top surface; empty if the lead is missing
 * @param heelPx middle of the foot's end at the body; empty if the lead is missing
 * @param landToePx middle of the land's open end
 * @param landHeelPx middle of the land's end at the body
 * @param condition "wetted", "open", "insufficient", "excess" or "missing-lead"
 * @param class2 what the joint is in product class 2
 * @param findings ids of what is wrong, as {@link leadlight.model.FindingKind#id()}
 * @param sideOverhangOfLeadWidth overhang of the lead beyond its land over the lead's width
 * @param wetted stretch of the foot, from its toe, that solder wets; empty if not stated
 * @param liftedMm height of a lead that floats
 * @param bridgeTo the other pin of a bridge
 */
public record JointTruth(
    int pin,
    Optional<PointPx> toePx,
    Optional<PointPx> heelPx,
    PointPx landToePx,
    PointPx landHeelPx,
    String condition,
    TrueClass class2,
    List<String> findings,
    OptionalDouble sideOverhangOfLeadWidth,
    Optional<Stretch> wetted,
    OptionalDouble liftedMm,
    OptionalInt bridgeTo) {

  /**
   * Part of a foot's length.
   *
   * @param from begin, 0 at the toe
   * @param to end, 1 at the heel
   */
  public record Stretch(double from, double to) {}

  /** Copies the list. */
  public JointTruth {
    findings = List.copyOf(findings);
  }
}
