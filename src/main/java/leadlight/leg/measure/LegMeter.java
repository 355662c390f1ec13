package leadlight.leg.measure;

import java.util.List;
import java.util.Map;
import leadlight.data.Scorecard;
import leadlight.leg.find.FoundLeg;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.vision.Frame;

/** Measures a leg: how far solder meets it, how much of its land solder covers, what stays open. */
public final class LegMeter {

  private static final double ROUND_DEG = 360;

  private final LegJudgement judgement;
  private final PartingTuning parting;

  public LegMeter(LegJudgement judgement, PartingTuning parting) {
    this.judgement = judgement;
    this.parting = parting;
  }

  /**
   * What was measured.
   *
   * @param wetted degrees of 360
   * @param covered share of the land
   * @param open share of the hole
   * @param parting depth of a dark line around the leg, 0 to 1
   */
  public record Measured(Quantity wetted, Quantity covered, Quantity open, double parting) {}

  /** Measures a leg in its photo; one that is surely parted from the solder is wetted nowhere. */
  public Measured measure(Frame frame, FoundLeg leg) {
    LegCut cut = new LegCut(frame, leg);
    LegSectors sectors = new LegSectors(cut, leg.leg(), parting);
    List<Map<String, Double>> signals = sectors.signals();
    double[] chances = chances(signals, judgement.wetted());
    Counted wetted = count(chances);
    Counted covered = count(chances(new RingCells(sectors).signals(signals), judgement.covered()));
    double open = 0;
    double area = 0;
    for (int i = 0; i < chances.length; i++) {
      double reach = sectors.holeReachMm(i);
      open += (1 - chances[i]) * reach * reach;
      area += reach * reach;
    }
    double u = wetted.unsure(judgement.leastDeg().value() / ROUND_DEG);
    double depth = new PartingLine(parting, cut, leg.leg(), sectors.bright()).depth();
    boolean parted = depth >= parting.partedFrom().value();
    return new Measured(
        new Quantity(parted ? 0 : ROUND_DEG * wetted.share, ROUND_DEG * u, Unit.DEGREE),
        new Quantity(covered.share, covered.unsure(judgement.leastShare().value()), Unit.SHARE),
        new Quantity(open / area, u, Unit.SHARE),
        depth);
  }

  /**
   * The share of sectors or cells that rather are.
   *
   * @param share of them
   * @param spread root mean variance of each: 0 where all are sure, one half where none is
   */
  private record Counted(double share, double spread) {

    /** Neighbours err together: half of what all would err by if they erred as one. */
    double unsure(double least) {
      return Math.hypot(least, spread / 2);
    }
  }

  private static double[] chances(List<Map<String, Double>> all, Scorecard card) {
    return all.stream().mapToDouble(signals -> card.chance(signals::get)).toArray();
  }

  private static Counted count(double[] chances) {
    double yes = 0;
    double variance = 0;
    for (double chance : chances) {
      yes += chance > 0.5 ? 1 : 0;
      variance += chance * (1 - chance);
    }
    return new Counted(yes / chances.length, Math.sqrt(variance / chances.length));
  }
}
