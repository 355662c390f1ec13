package leadlight.joint;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import leadlight.model.Evidence;
import leadlight.model.FaultChances;
import leadlight.model.Reason;

/** From signals to the chance of each finding, by the scorecards. */
final class EvidenceMaker {

  private final Judgement judgement;
  private final RowSignals row;

  EvidenceMaker(Judgement judgement, RowSignals row) {
    this.judgement = judgement;
    this.row = row;
  }

  /**
   * The chances of one joint, but that of a ball beside it.
   *
   * @param index place in the row from 0
   * @param over chance that the side overhang passes a share of the lead's width
   */
  FaultChances chances(int index, DoubleUnaryOperator over) {
    Signals joint = row.joints().get(index);
    return new FaultChances(
        judgement.missing().chance(joint),
        judgement.unwetted().chance(joint),
        judgement.openNotStarved().chance(joint),
        judgement.excess().chance(joint),
        index == 0 ? 0 : judgement.bridge().chance(row.gaps().get(index - 1)),
        index == row.gaps().size() ? 0 : judgement.bridge().chance(row.gaps().get(index)),
        0,
        over.applyAsDouble(FaultChances.QUARTER),
        over.applyAsDouble(FaultChances.HALF));
  }

  /**
   * The same by names of findings, with the signals that speak for each.
   *
   * @param fine false if the photo shows coarse faults only: fillets are then not spoken of
   */
  List<Evidence> of(int index, FaultChances chances, boolean fine) {
    return chances.named(index + 1, row.joints().size(), fine).stream()
        .map(named -> evidence(index, named))
        .toList();
  }

  private Evidence evidence(int index, FaultChances.Named named) {
    List<Reason> reasons = reasons(index, named);
    return new Evidence(
        named.kind(), named.chance(), named.neighbourPin(), Scorecard.words(reasons), reasons);
  }

  private List<Reason> reasons(int index, FaultChances.Named named) {
    Signals joint = row.joints().get(index);
    return switch (named.kind()) {
      case MISSING_LEAD -> judgement.missing().reasons(joint);
      case EXCESS -> judgement.excess().reasons(joint);
      case BRIDGE ->
          judgement
              .bridge()
              .reasons(row.gaps().get(named.neighbourPin() > index + 1 ? index : index - 1));
      default -> judgement.unwetted().reasons(joint);
    };
  }
}
