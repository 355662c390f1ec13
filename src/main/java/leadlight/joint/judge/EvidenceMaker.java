package leadlight.joint.judge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leadlight.joint.cut.Signals;
import leadlight.joint.signal.RowSignals;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Reason;

/** From signals to the chance of each finding, by the scorecards. */
public final class EvidenceMaker {

  private final Judgement judgement;
  private final RowSignals row;
  private final MetalAcrossRule metal;
  private final List<OptionalDouble> crossed;

  public EvidenceMaker(Judgement judgement, MetalAcrossRule metal, RowSignals row) {
    this.judgement = judgement;
    this.metal = metal;
    this.row = row;
    this.crossed = metal.crossed(row.gaps());
  }

  /**
   * The chances of one joint, but that of a ball beside it.
   *
   * @param index place in the row from 0
   * @param over chance that the side overhang passes a share of the lead's width
   */
  public Chances chances(int index, DoubleUnaryOperator over) {
    Signals joint = row.joints().get(index);
    return Chances.of(
        question ->
            switch (question) {
              case BRIDGE_BEFORE -> bridge(index - 1);
              case BRIDGE_AFTER -> bridge(index);
              case BALL -> 0;
              case OVER_QUARTER -> over.applyAsDouble(Question.QUARTER);
              case OVER_HALF -> over.applyAsDouble(Question.HALF);
              default -> judgement.card(question).chance(joint);
            });
  }

  /** Metal across a gap; beyond an end of the row there is none. */
  private double bridge(int gap) {
    return gap < 0 || gap == row.gaps().size() ? 0 : judgement.bridge().chance(row.gaps().get(gap));
  }

  /** The same by names of findings, with the signals that speak for each. */
  public List<Evidence> of(int index, Chances chances) {
    return chances.faults(index + 1, row.joints().size()).stream()
        .map(fault -> evidence(index, fault))
        .toList();
  }

  /** Metal that crosses a gap is evidence by itself, whatever the row's other gaps look like. */
  private Evidence evidence(int index, Chances.Fault fault) {
    OptionalDouble share =
        fault.kind() == FindingKind.BRIDGE
            ? crossed.get(gap(index, fault))
            : OptionalDouble.empty();
    return share.isPresent()
        ? across(fault, share.getAsDouble())
        : new Evidence(
            fault.kind(),
            fault.chance(),
            fault.neighbourPin(),
            Optional.empty(),
            reasons(index, fault));
  }

  private Evidence across(Chances.Fault fault, double share) {
    double chance = metal.chance().value();
    double points = Math.log(chance / (1 - chance));
    return new Evidence(
        fault.kind(),
        Math.max(chance, fault.chance()),
        fault.neighbourPin(),
        Optional.of(new NoteOfJoint.MetalAcross(share)),
        List.of(new Reason("gap_metal_across", share, 0, points)));
  }

  private static int gap(int index, Chances.Fault bridge) {
    return bridge.neighbourPin() > index + 1 ? index : index - 1;
  }

  private List<Reason> reasons(int index, Chances.Fault fault) {
    Signals joint = row.joints().get(index);
    return switch (fault.kind()) {
      case MISSING_LEAD -> judgement.card(Question.MISSING).reasons(joint);
      case EXCESS -> judgement.card(Question.EXCESS).reasons(joint);
      case BRIDGE -> judgement.bridge().reasons(row.gaps().get(gap(index, fault)));
      default -> judgement.card(Question.UNWETTED).reasons(joint);
    };
  }
}
