package leadlight.model;

import java.util.ArrayList;
import java.util.List;

/**
 * One opinion on one joint: chances of its faults, 0 to 1.
 *
 * @param missing there is no lead on the land
 * @param unwetted if there is a lead: no fillet joins its toe to the land
 * @param open if it is unwetted: the lead is open rather than starved
 * @param excess if there is a lead: solder hides it
 * @param bridgeBefore metal spans the gap to the pin before
 * @param bridgeAfter metal spans the gap to the next pin
 * @param ball a loose solder ball lies beside or ahead of it
 * @param overQuarter if there is a lead: it stands over its land's side by more than a quarter of
 *     its width
 * @param overHalf the same by more than half of its width
 */
public record FaultChances(
    double missing,
    double unwetted,
    double open,
    double excess,
    double bridgeBefore,
    double bridgeAfter,
    double ball,
    double overQuarter,
    double overHalf) {

  /** Shares of the lead's width that limits of side overhang are set at: classes 3, and 1 and 2. */
  public static final double QUARTER = 0.25;

  public static final double HALF = 0.5;

  /** In the place of ball and overhang: a scoring from before they were asked for. */
  public static final double NOT_ASKED = Double.NaN;

  /** A second name for the same lack of solder is worth saying from this share on. */
  private static final double SECOND_NAME_FROM = 0.25;

  /** Refuses a chance outside 0 to 1. */
  public FaultChances {
    Checks.within("missing", missing, 0, 1);
    Checks.within("unwetted", unwetted, 0, 1);
    Checks.within("open", open, 0, 1);
    Checks.within("excess", excess, 0, 1);
    Checks.within("bridgeBefore", bridgeBefore, 0, 1);
    Checks.within("bridgeAfter", bridgeAfter, 0, 1);
    askedWithin("ball", ball);
    askedWithin("overQuarter", overQuarter);
    askedWithin("overHalf", overHalf);
  }

  private static void askedWithin(String name, double chance) {
    if (!Double.isNaN(chance)) {
      Checks.within(name, chance, 0, 1);
    }
  }

  /** The same with another chance of a ball. */
  public FaultChances withBall(double chance) {
    return new FaultChances(
        missing, unwetted, open, excess, bridgeBefore, bridgeAfter, chance, overQuarter, overHalf);
  }

  /**
   * A chance with its name.
   *
   * @param kind the finding
   * @param chance how likely
   * @param neighbourPin the other pin of a bridge, else 0
   */
  public record Named(FindingKind kind, double chance, int neighbourPin) {}

  /**
   * The chances of lack, excess and bridges of solder by the names of findings. Ball and overhang
   * are not among them: they are spoken of by what was measured.
   *
   * @param pin the joint's own pin
   * @param leads leads of the row: a joint at an end has one gap
   * @param fine false if the photo shows coarse faults only: fillets are then not spoken of
   */
  public List<Named> named(int pin, int leads, boolean fine) {
    List<Named> named = new ArrayList<>();
    named.add(new Named(FindingKind.MISSING_LEAD, missing, 0));
    if (fine) {
      wetting(named);
      named.add(new Named(FindingKind.EXCESS, (1 - missing) * excess, 0));
    }
    if (pin > 1) {
      named.add(new Named(FindingKind.BRIDGE, bridgeBefore, pin - 1));
    }
    if (pin < leads) {
      named.add(new Named(FindingKind.BRIDGE, bridgeAfter, pin + 1));
    }
    return named;
  }

  /**
   * The chance of a toe without fillet goes to the likelier of its two names; the other is given
   * its share if that is worth saying.
   */
  private void wetting(List<Named> into) {
    double lacking = (1 - missing) * unwetted;
    boolean openFirst = open >= 0.5;
    FindingKind first = openFirst ? FindingKind.OPEN : FindingKind.INSUFFICIENT;
    FindingKind second = openFirst ? FindingKind.INSUFFICIENT : FindingKind.OPEN;
    double secondShare = Math.min(open, 1 - open);
    into.add(new Named(first, lacking, 0));
    if (secondShare >= SECOND_NAME_FROM) {
      into.add(new Named(second, lacking * secondShare, 0));
    }
  }
}
