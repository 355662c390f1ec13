package leadlight.joint.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.joint.dirt.DirtLimits;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.joint.Evidence;
import org.junit.jupiter.api.Test;

class PlacementEvidenceTest {

  private static final DirtLimits LIMITS = DirtLimits.builtIn();

  private static Map<Measure, Quantity> sizes(double angleDeg, double u, double toeMm) {
    return Map.of(
        Measure.LEAD_ANGLE, new Quantity(angleDeg, u, Unit.DEGREE),
        Measure.TOE_OVERHANG, new Quantity(toeMm, 0.02, Unit.MM));
  }

  private static List<Evidence> told(Map<Measure, Quantity> joint, Evidence... other) {
    return new PlacementEvidence(
            LIMITS.placement(), LIMITS.freeTo().value(), Collections.nCopies(1, joint))
        .of(joint, List.of(other));
  }

  private static Evidence hidden(FindingKind by) {
    return new Evidence(by, 0.6, 0, Optional.empty(), List.of());
  }

  @Test
  void aLeadProvenTurnedEitherWayIsSkewed() {
    assertThat(told(sizes(8, 1, 0)))
        .extracting(Evidence::kind)
        .containsExactly(FindingKind.SKEWED_LEAD);
    assertThat(told(sizes(-8, 1, 0)))
        .extracting(Evidence::kind)
        .containsExactly(FindingKind.SKEWED_LEAD);
  }

  /** Phi(1.645) = 0.95, from the tables of the normal distribution. */
  @Test
  void anAngleIsToldFromOnePointSixFourFiveUncertaintiesBeyondTheLimit() {
    double limit = LIMITS.placement().skewDeg().value();
    assertThat(told(sizes(limit + 1.64, 1, 0))).isEmpty();
    assertThat(told(sizes(limit + 1.65, 1, 0)).get(0).probability()).isCloseTo(0.95, within(0.001));
  }

  @Test
  void aToeProvenBeyondItsLandOverhangs() {
    assertThat(told(sizes(0, 1, 0.06)))
        .extracting(Evidence::kind)
        .containsExactly(FindingKind.TOE_OVERHANG);
    assertThat(told(sizes(0, 1, 0.02))).isEmpty();
    assertThat(told(sizes(0, 1, 0))).isEmpty();
  }

  @Test
  void aLeadThatCannotBeSeenIsNotMeasured() {
    assertThat(told(sizes(8, 1, 0), hidden(FindingKind.MISSING_LEAD))).isEmpty();
    assertThat(told(sizes(8, 1, 0), hidden(FindingKind.EXCESS))).isEmpty();
  }

  @Test
  void noAngleIsBelievedWhereManyLeadsSeemTurned() {
    Map<Measure, Quantity> turned = sizes(8, 1, 0);
    List<Map<Measure, Quantity>> row = Collections.nCopies(12, turned);
    assertThat(
            new PlacementEvidence(LIMITS.placement(), LIMITS.freeTo().value(), row)
                .of(turned, List.of()))
        .isEmpty();
  }
}
