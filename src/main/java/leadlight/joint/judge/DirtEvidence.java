package leadlight.joint.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.joint.dirt.DirtLimits;
import leadlight.joint.dirt.Spot;
import leadlight.joint.signal.DirtSignals;
import leadlight.model.FindingKind;
import leadlight.model.joint.Evidence;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Reason;

/**
 * From foreign matter and pits to the chance of residue, solder ball and void. The chance grows
 * with the square of what was measured: one half at the figure that the data give for it (a
 * logistic curve of the logarithm).
 */
public final class DirtEvidence {

  /** Below this there is nothing to speak of. */
  private static final double WORTH_SAYING = 0.05;

  /** Metal that may reach across is a bridge's matter. */
  private static final Set<FindingKind> BRIDGES = Set.of(FindingKind.BRIDGE);

  /** A land that is not wetted has dark places of its own. */
  private static final Set<FindingKind> OTHER_FAULTS =
      Set.of(
          FindingKind.OPEN, FindingKind.INSUFFICIENT, FindingKind.EXCESS, FindingKind.MISSING_LEAD);

  private final DirtSignals row;
  private final DirtLimits limits;

  public DirtEvidence(DirtSignals row, DirtLimits limits) {
    this.row = row;
    this.limits = limits;
  }

  /**
   * Evidence on one joint.
   *
   * @param index place in the row from 0
   * @param other what else speaks against the joint
   */
  public List<Evidence> of(int index, List<Evidence> other) {
    List<Evidence> evidence = new ArrayList<>();
    residue(row.residue()[index]).ifPresent(evidence::add);
    if (free(other, BRIDGES)) {
      row.balls().get(index).stream()
          .max(Comparator.comparingDouble(Spot::highlight))
          .flatMap(this::ball)
          .ifPresent(evidence::add);
    }
    if (free(other, OTHER_FAULTS)) {
      pit(row.pits()[index]).ifPresent(evidence::add);
    }
    return evidence;
  }

  private boolean free(List<Evidence> other, Set<FindingKind> kinds) {
    return other.stream()
        .filter(evidence -> kinds.contains(evidence.kind()))
        .allMatch(evidence -> evidence.probability() <= limits.freeTo().value());
  }

  private Optional<Evidence> residue(double amount) {
    double half = limits.stain().area().value();
    return evidence(
        FindingKind.RESIDUE, "residue_film", amount, half, new NoteOfJoint.Film(amount));
  }

  private Optional<Evidence> ball(Spot spot) {
    return evidence(
        FindingKind.SOLDER_BALL,
        "ball_highlight",
        spot.highlight(),
        limits.spot().highlight().value(),
        new NoteOfJoint.Ball(spot.wide(), spot.highlight()));
  }

  /** The chance of a ball that the evidence holds. */
  public static double ball(List<Evidence> evidence) {
    return evidence.stream()
        .filter(one -> one.kind() == FindingKind.SOLDER_BALL)
        .mapToDouble(Evidence::probability)
        .max()
        .orElse(0);
  }

  private Optional<Evidence> pit(double depth) {
    double half = limits.pit().depth().value();
    return evidence(FindingKind.VOID, "pit_depth", depth, half, new NoteOfJoint.Pit(depth));
  }

  private static Optional<Evidence> evidence(
      FindingKind kind, String signal, double value, double half, Note measured) {
    double chance = value <= 0 ? 0 : 1 / (1 + (half / value) * (half / value));
    return chance < WORTH_SAYING
        ? Optional.empty()
        : Optional.of(
            new Evidence(
                kind,
                chance,
                0,
                Optional.of(measured),
                List.of(new Reason(signal, value, 0, 2 * Math.log(value / half)))));
  }
}
