package leadlight.joint;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Evidence;
import leadlight.model.FindingKind;
import leadlight.model.Reason;

/** From signals to the chance of each finding, by the scorecards. */
final class EvidenceMaker {

  /** A second name for the same lack of solder is worth saying from this share on. */
  private static final double SECOND_NAME_FROM = 0.25;

  private final Judgement judgement;
  private final RowSignals row;

  EvidenceMaker(Judgement judgement, RowSignals row) {
    this.judgement = judgement;
    this.row = row;
  }

  /**
   * Evidence on one joint.
   *
   * @param index place in the row from 0
   * @param fine false if the photo shows coarse faults only: fillets are then not spoken of
   */
  List<Evidence> of(int index, boolean fine) {
    Signals joint = row.joints().get(index);
    List<Evidence> evidence = new ArrayList<>();
    double missing = judgement.missing().chance(joint);
    evidence.add(simple(FindingKind.MISSING_LEAD, missing, judgement.missing(), joint));
    if (fine) {
      wetting(joint, 1 - missing, evidence);
      evidence.add(
          simple(
              FindingKind.EXCESS,
              (1 - missing) * judgement.excess().chance(joint),
              judgement.excess(),
              joint));
    }
    if (index > 0) {
      evidence.add(bridge(index - 1, index));
    }
    if (index < row.gaps().size()) {
      evidence.add(bridge(index, index + 2));
    }
    return evidence;
  }

  /**
   * The chance of a toe without fillet goes to the likelier of its two names; the other is given
   * its share if that is worth saying.
   */
  private void wetting(Signals joint, double present, List<Evidence> into) {
    double unwetted = present * judgement.unwetted().chance(joint);
    double open = judgement.openNotStarved().chance(joint);
    List<Reason> reasons = judgement.unwetted().reasons(joint);
    boolean openFirst = open >= 0.5;
    FindingKind first = openFirst ? FindingKind.OPEN : FindingKind.INSUFFICIENT;
    FindingKind second = openFirst ? FindingKind.INSUFFICIENT : FindingKind.OPEN;
    double secondShare = Math.min(open, 1 - open);
    into.add(evidence(first, unwetted, 0, reasons));
    if (secondShare >= SECOND_NAME_FROM) {
      into.add(evidence(second, unwetted * secondShare, 0, reasons));
    }
  }

  private Evidence bridge(int gap, int neighbourPin) {
    Signals signals = row.gaps().get(gap);
    return evidence(
        FindingKind.BRIDGE,
        judgement.bridge().chance(signals),
        neighbourPin,
        judgement.bridge().reasons(signals));
  }

  private static Evidence simple(FindingKind kind, double chance, Scorecard card, Signals signals) {
    return evidence(kind, chance, 0, card.reasons(signals));
  }

  private static Evidence evidence(
      FindingKind kind, double chance, int neighbourPin, List<Reason> reasons) {
    return new Evidence(kind, chance, neighbourPin, Scorecard.words(reasons), reasons);
  }
}
