package leadlight.leg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Conformance;
import leadlight.grade.limits.Feature;
import leadlight.grade.limits.JointGeometry;
import leadlight.grade.limits.Limit;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.measure.LegJudgement;
import leadlight.leg.measure.LegMeter;
import leadlight.leg.measure.PartingTuning;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.Quantity;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;

/**
 * Judges a measured leg in one product class: enough solder all round and over the land, decided
 * with the measures' uncertainty (JCGM 106:2012). Fill of the hole is never stated: it does not
 * show.
 */
final class LegGrader {

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final JointGeometry NO_LENGTHS = new JointGeometry(NONE, NONE, NONE, NONE, NONE);

  private final AcceptanceSet limits;
  private final int productClass;
  private final BoardSide side;
  private final Optional<Doubt> noSide;
  private final LegJudgement judgement;
  private final PartingTuning parting;
  private final int widthPx;
  private final int heightPx;

  /**
   * Takes what all legs of a photo are judged by.
   *
   * @param noSide why none is judged from this side; empty if they are
   * @param widthPx columns of the photo
   * @param heightPx its rows
   */
  LegGrader(
      AcceptanceSet limits,
      int productClass,
      BoardSide side,
      Optional<Doubt> noSide,
      LegJudgement judgement,
      PartingTuning parting,
      int widthPx,
      int heightPx) {
    this.limits = limits;
    this.productClass = productClass;
    this.side = side;
    this.noSide = noSide;
    this.judgement = judgement;
    this.parting = parting;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /** The verdict. */
  GradedLeg grade(FoundLeg leg, LegMeter.Measured measured) {
    boolean solder = side == BoardSide.SOLDER;
    Optional<Limit> wetting =
        limit(solder ? Feature.LEG_SOURCE_WETTING : Feature.LEG_DESTINATION_WETTING);
    Optional<Limit> cover =
        limit(solder ? Feature.LEG_SOURCE_LAND_COVERAGE : Feature.LEG_DESTINATION_LAND_COVERAGE);
    List<Doubt> doubts = new ArrayList<>();
    List<FindingKind> findings = new ArrayList<>();
    List<String> clauses = new ArrayList<>();
    unfit(leg).ifPresent(doubts::add);
    if (doubts.isEmpty()) {
      decide(measured.wetted(), wetting, true, findings, doubts, clauses);
      decide(measured.covered(), cover, false, findings, doubts, clauses);
      parted(measured).ifPresent(doubts::add);
    }
    Verdict verdict = Verdict.ACCEPTABLE;
    if (!findings.isEmpty()) {
      verdict = Verdict.DEFECT;
      doubts.clear();
    } else if (!doubts.isEmpty()) {
      verdict = Verdict.UNJUDGED;
    }
    return new GradedLeg(
        leg.number() == 0 ? OptionalInt.empty() : OptionalInt.of(leg.number()),
        leg.place().centre(),
        leg.outline(),
        leg.match(),
        verdict,
        findings.stream().distinct().toList(),
        measured.wetted(),
        measured.covered(),
        measured.open(),
        doubts,
        clauses);
  }

  private Optional<Limit> limit(Feature feature) {
    return limits.limit(feature, productClass, NO_LENGTHS);
  }

  /** Why a leg cannot be judged at all. */
  private Optional<Doubt> unfit(FoundLeg leg) {
    double landPx =
        Math.max(leg.leg().landWidthMm(), leg.leg().landHeightMm()) * leg.place().pxPerMm();
    if (landPx < judgement.leastLandPx().value()) {
      return Optional.of(new DoubtOfLeg.LegTooSmall(landPx, judgement.leastLandPx().value()));
    }
    if (!inside(leg)) {
      return Optional.of(new DoubtOfLeg.LegCropped());
    }
    if (leg.match() <= judgement.hiddenTo().value()) {
      return Optional.of(new DoubtOfLeg.LegHidden(leg.match()));
    }
    return noSide;
  }

  /** A dark line all round that may or may not part the leg from the solder. */
  private Optional<Doubt> parted(LegMeter.Measured measured) {
    double depth = measured.parting();
    return depth >= parting.doubtFrom().value()
        ? Optional.of(new DoubtOfLeg.LegParted(depth))
        : Optional.empty();
  }

  private boolean inside(FoundLeg leg) {
    return leg.outline().stream()
        .allMatch(at -> at.x() >= 0 && at.y() >= 0 && at.x() < widthPx && at.y() < heightPx);
  }

  private void decide(
      Quantity measured,
      Optional<Limit> limit,
      boolean wetting,
      List<FindingKind> findings,
      List<Doubt> doubts,
      List<String> clauses) {
    if (limit.isEmpty()) {
      doubts.add(new DoubtOfLeg.NoLegLimit());
      return;
    }
    double needed = limit.get().value();
    double kept =
        Conformance.probability(measured.value(), measured.u(), needed, limit.get().bound());
    switch (Conformance.zone(kept, limits.decisionLevel())) {
      case KEPT -> {}
      case PASSED -> {
        findings.add(measured.value() == 0 ? FindingKind.OPEN : FindingKind.INSUFFICIENT);
        clauses.add(limit.get().basis().words());
      }
      case NEITHER ->
          doubts.add(
              wetting
                  ? new DoubtOfLeg.WettingUndecided(measured.value(), measured.u(), needed, kept)
                  : new DoubtOfLeg.CoverUndecided(measured.value(), measured.u(), needed, kept));
    }
  }
}
