package leadlight.joint.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.TypicalJoint;
import leadlight.joint.judge.FitnessLimits;
import leadlight.joint.place.DrawnJoints;
import leadlight.joint.place.PlacementModel;
import leadlight.joint.place.StraightRow;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class GapSignalsTest {

  private static RowSignals signals(DrawnJoints drawn) {
    return signals(drawn, DrawnJoints.spec());
  }

  private static RowSignals signals(DrawnJoints drawn, RowSpec spec) {
    RowOutcome.Found row = DrawnJoints.row();
    try (Frame frame = drawn.frame()) {
      StraightRow straight = StraightRow.of(frame, spec, row);
      return RowSignals.of(
          straight,
          TypicalJoint.of(straight.levelled()),
          spec,
          row.leads(),
          PlacementModel.builtIn());
    }
  }

  @Test
  void metalAcrossAGapLeavesNoColumnThatLooksUsual() {
    List<Signals> gaps = signals(new DrawnJoints().withBridgeAfter(2)).gaps();
    for (int i = 0; i < gaps.size(); i++) {
      double span = gaps.get(i).get("gap_span_over_usual");
      if (i == 2) {
        assertThat(span).isGreaterThan(0.3);
      } else {
        assertThat(span).isLessThan(0.05);
      }
    }
  }

  @Test
  void metalThatTouchesNeitherLandDoesNotSpanTheGap() {
    Signals gap = signals(new DrawnJoints().withBallAfter(4)).gaps().get(4);
    assertThat(gap.get("gap_span_over_usual")).isLessThan(0.1);
    assertThat(gap.get("gap_reach")).isGreaterThan(0.1);
  }

  @Test
  void jointsUnderACoverAreToldAndTheirNeighboursAreNot() {
    Covers covers =
        new Covers(
            signals(new DrawnJoints().covered(2, 4)).gaps(),
            FitnessLimits.builtIn().coveredFrom().value());
    assertThat(covers.covers(3)).isTrue();
    assertThat(covers.covers(0)).isFalse();
    assertThat(covers.covers(6)).isFalse();
  }

  @Test
  void aRowThatNothingCoversHasNoCoveredJoint() {
    Covers covers =
        new Covers(
            signals(new DrawnJoints().withBridgeAfter(2)).gaps(),
            FitnessLimits.builtIn().coveredFrom().value());
    for (int joint = 0; joint < 8; joint++) {
      assertThat(covers.covers(joint)).isFalse();
    }
  }

  @Test
  void aBandAheadOfTheToeShowsAsARiseAndAFall() {
    RowSignals row = signals(new DrawnJoints().withLeadShifted(3, 0));
    assertThat(row.joints().get(5).get("toe_band_edges"))
        .isGreaterThan(3 * row.joints().get(3).get("toe_band_edges"));
  }

  @Test
  void metalFromLeadToLeadCannotBeAvoidedOnAnyWayThroughTheGap() {
    List<Signals> gaps = signals(new DrawnJoints().floodedBetween(2, 5)).gaps();
    for (int i = 0; i < gaps.size(); i++) {
      double across = gaps.get(i).get("gap_metal_across");
      if (i >= 2 && i < 5) {
        assertThat(across).isGreaterThan(0.9);
      } else {
        assertThat(across).isLessThan(0.2);
      }
    }
  }

  @Test
  void aRowFloodedThroughoutShowsItWithoutAGapToCompareWith() {
    assertThat(signals(new DrawnJoints().floodedBetween(0, 7)).gaps())
        .allSatisfy(gap -> assertThat(gap.get("gap_metal_across")).isGreaterThan(0.9));
  }

  @Test
  void bareLaminateIsNoMetalHoweverLightItIs() {
    assertThat(signals(new DrawnJoints().withBareLaminate()).gaps())
        .allSatisfy(gap -> assertThat(gap.get("gap_metal_across")).isLessThan(0.6));
  }

  @Test
  void aBallThatTouchesNoLeadLeavesAWayRoundIt() {
    assertThat(signals(new DrawnJoints().withBallAfter(4)).gaps().get(4).get("gap_metal_across"))
        .isLessThan(0.2);
  }

  @Test
  void aGapWiderThanWhatIsCutOutIsNotSaidToBeCrossed() {
    List<LandSpec> lands = new ArrayList<>(DrawnJoints.spec().lands());
    LandSpec last = lands.remove(lands.size() - 1);
    lands.add(
        new LandSpec(last.pin(), last.name(), last.uMm() + 0.2, last.widthMm(), last.lengthMm()));
    RowSpec wide = new RowSpec("plain", lands, 0.5, OptionalDouble.empty(), false);
    List<Signals> gaps = signals(new DrawnJoints().floodedBetween(0, 7), wide).gaps();
    assertThat(gaps.get(5).get("gap_metal_across")).isGreaterThan(0.9);
    assertThat(gaps.get(6).get("gap_metal_across")).isZero();
  }
}
