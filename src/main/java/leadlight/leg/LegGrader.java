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
import leadlight.leg.read.LegReader;
import leadlight.leg.read.Reach;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;

/**
 * Judges a leg that was read in one product class: enough solder all round and over the land,
 * decided by the probability that a limit is kept (JCGM 106:2012). From the component side faults
 * are called and nothing is vouched for. Fill of the hole is never stated: it does not show.
 */
final class LegGrader {

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final JointGeometry NO_LENGTHS = new JointGeometry(NONE, NONE, NONE, NONE, NONE);

  private final AcceptanceSet limits;
  private final int productClass;
  private final BoardSide side;
  private final Optional<Doubt> otherSide;
  private final LegJudging judging;
  private final int widthPx;
  private final int heightPx;

  /**
   * Takes what all legs of a photo are judged by.
   *
   * @param otherSide why the photo is not taken for one of this side; empty if it is
   * @param widthPx columns of the photo
   * @param heightPx its rows
   */
  LegGrader(
      AcceptanceSet limits,
      int productClass,
      BoardSide side,
      Optional<Doubt> otherSide,
      LegJudging judging,
      int widthPx,
      int heightPx) {
    this.limits = limits;
    this.productClass = productClass;
    this.side = side;
    this.otherSide = otherSide;
    this.judging = judging;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /** The verdict. */
  GradedLeg grade(FoundLeg leg, LegReader.Reading read) {
    boolean solder = side == BoardSide.SOLDER;
    Optional<Limit> wetting =
        limit(solder ? Feature.LEG_SOURCE_WETTING : Feature.LEG_DESTINATION_WETTING);
    Optional<Limit> cover =
        limit(solder ? Feature.LEG_SOURCE_LAND_COVERAGE : Feature.LEG_DESTINATION_LAND_COVERAGE);
    Found found = new Found();
    unfit(leg, read).ifPresent(found.doubts::add);
    if (found.doubts.isEmpty()) {
      found.decide(read, read.wetted(), wetting, true);
      found.decide(read, read.covered(), cover, false);
      if (!solder) {
        found.doubts.clear();
        found.doubts.add(new DoubtOfLeg.ComponentSide());
      }
    }
    Verdict verdict = Verdict.ACCEPTABLE;
    if (!found.findings.isEmpty()) {
      verdict = Verdict.DEFECT;
      found.doubts.clear();
    } else if (!found.doubts.isEmpty()) {
      verdict = Verdict.UNJUDGED;
    }
    return new GradedLeg(
        leg.number() == 0 ? OptionalInt.empty() : OptionalInt.of(leg.number()),
        leg.place().centre(),
        leg.outline(),
        leg.match(),
        verdict,
        found.findings.stream().distinct().toList(),
        quantity(read.wetted(), Unit.DEGREE),
        quantity(read.covered(), Unit.SHARE),
        quantity(read.open(), Unit.SHARE),
        found.doubts,
        found.clauses);
  }

  private static Quantity quantity(Reach reach, Unit unit) {
    return new Quantity(reach.mean(), reach.u(), unit);
  }

  private Optional<Limit> limit(Feature feature) {
    return limits.limit(feature, productClass, NO_LENGTHS);
  }

  /** Why a leg cannot be judged at all. */
  private Optional<Doubt> unfit(FoundLeg leg, LegReader.Reading read) {
    double landPx =
        Math.max(leg.leg().landWidthMm(), leg.leg().landHeightMm()) * leg.place().pxPerMm();
    if (landPx < judging.leastLandPx().value()) {
      return Optional.of(new DoubtOfLeg.LegTooSmall(landPx, judging.leastLandPx().value()));
    }
    if (!leg.inside(widthPx, heightPx)) {
      return Optional.of(new DoubtOfLeg.LegCropped());
    }
    if (leg.match() <= judging.hiddenTo().value()) {
      return Optional.of(new DoubtOfLeg.LegHidden(leg.match()));
    }
    if (read.burntOut() >= judging.burntFrom().value()) {
      return Optional.of(new DoubtOfLeg.LegBurntOut(read.burntOut()));
    }
    return otherSide;
  }

  /** What comes of the limits, one after the other. */
  private final class Found {

    private final List<Doubt> doubts = new ArrayList<>();
    private final List<FindingKind> findings = new ArrayList<>();
    private final List<String> clauses = new ArrayList<>();

    void decide(LegReader.Reading read, Reach reach, Optional<Limit> limit, boolean wetting) {
      if (limit.isEmpty()) {
        doubts.add(new DoubtOfLeg.NoLegLimit());
        return;
      }
      double needed = limit.get().value();
      double kept = reach.atLeast(needed);
      switch (Conformance.zone(kept, limits.decisionLevel())) {
        case KEPT -> {}
        case PASSED -> {
          // Open is what rather meets no solder at all.
          findings.add(read.wetted().none() > 0.5 ? FindingKind.OPEN : FindingKind.INSUFFICIENT);
          clauses.add(limit.get().basis().words());
        }
        case NEITHER ->
            doubts.add(
                wetting
                    ? new DoubtOfLeg.WettingUndecided(reach.mean(), reach.u(), needed, kept)
                    : new DoubtOfLeg.CoverUndecided(reach.mean(), reach.u(), needed, kept));
      }
    }
  }
}
