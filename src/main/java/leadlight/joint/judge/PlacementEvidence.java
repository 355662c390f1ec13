package leadlight.joint.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.joint.dirt.DirtLimits;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.joint.Evidence;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Reason;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Leads that lie turned on their land or hang over its open end. Stated only where the measure
 * passes the limit beyond its uncertainty: the true value is taken as normally distributed about
 * the estimate (JCGM 106:2012, 7.2 and 8.3.2). What is not proven is no doubt, since neither
 * finding is a defect by itself.
 */
public final class PlacementEvidence {

  /** No lead, or none to be seen, is none to be measured. */
  private static final Set<FindingKind> HIDE_LEAD =
      Set.of(FindingKind.MISSING_LEAD, FindingKind.EXCESS);

  private final DirtLimits.Placement limits;
  private final double freeTo;
  private final boolean anglesHold;

  /**
   * Takes the limits.
   *
   * @param freeTo greatest chance that the lead cannot be seen
   * @param row sizes of all joints: a row whose leads all seem turned is one whose angles this
   *     photo does not give
   */
  public PlacementEvidence(
      DirtLimits.Placement limits, double freeTo, List<Map<Measure, Quantity>> row) {
    this.limits = limits;
    this.freeTo = freeTo;
    long turned =
        row.stream()
            .filter(
                sizes -> Math.abs(sizes.get(Measure.LEAD_ANGLE).value()) > limits.skewDeg().value())
            .count();
    this.anglesHold = turned <= Math.max(1, limits.mostTurned().value() * row.size());
  }

  /** Evidence on one joint, given what else speaks against it. */
  public List<Evidence> of(Map<Measure, Quantity> sizes, List<Evidence> other) {
    List<Evidence> evidence = new ArrayList<>();
    boolean hidden =
        other.stream().anyMatch(e -> HIDE_LEAD.contains(e.kind()) && e.probability() > freeTo);
    if (!hidden) {
      if (anglesHold) {
        passed(FindingKind.SKEWED_LEAD, sizes.get(Measure.LEAD_ANGLE), limits.skewDeg().value())
            .ifPresent(evidence::add);
      }
      passed(
              FindingKind.TOE_OVERHANG,
              sizes.get(Measure.TOE_OVERHANG),
              limits.toeOverhangMm().value())
          .ifPresent(evidence::add);
    }
    return evidence;
  }

  private Optional<Evidence> passed(FindingKind kind, Quantity measured, double limit) {
    double size = Math.abs(measured.value());
    double chance = chance(size - limit, measured.u());
    if (chance < limits.proven().value()) {
      return Optional.empty();
    }
    Note seen =
        kind == FindingKind.SKEWED_LEAD
            ? new NoteOfJoint.Turned(size, measured.u(), limit)
            : new NoteOfJoint.AgainstLimit(size, measured.u(), limit);
    String signal = kind == FindingKind.SKEWED_LEAD ? "lead_angle" : "toe_overhang";
    return Optional.of(
        new Evidence(
            kind, chance, 0, Optional.of(seen), List.of(new Reason(signal, size, limit, 1))));
  }

  /** Chance that the side overhang passes a share of the lead's width, as above. */
  public static double over(double share, Map<Measure, Quantity> sizes) {
    Quantity overhang = sizes.get(Measure.SIDE_OVERHANG);
    double limit = share * sizes.get(Measure.LEAD_WIDTH).value();
    return chance(overhang.value() - limit, overhang.u());
  }

  private static double chance(double beyond, double u) {
    if (u == 0) {
      return beyond > 0 ? 1 : 0;
    }
    return NormalDistribution.of(0, u).cumulativeProbability(beyond);
  }
}
