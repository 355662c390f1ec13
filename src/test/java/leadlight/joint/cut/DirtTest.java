package leadlight.joint.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.joint.dirt.DirtLimits;
import leadlight.joint.judge.DirtEvidence;
import leadlight.joint.signal.DirtSignals;
import leadlight.model.FindingKind;
import leadlight.model.joint.Evidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Balls, residue and pits on drawn joints; no figure of the data file was fitted to these. */
class DirtTest {

  private static final DirtLimits LIMITS = DirtLimits.builtIn();
  private static final double SEEN = 0.5;

  private static DirtyRow onGreen() {
    return new DirtyRow(10, 30, 90, 50);
  }

  private static List<FindingKind> seen(DirtyRow row, int joint, Evidence... other) {
    return new DirtEvidence(row.dirt(), LIMITS)
        .of(joint, List.of(other)).stream()
            .filter(evidence -> evidence.probability() >= SEEN)
            .map(Evidence::kind)
            .toList();
  }

  private static Evidence chance(FindingKind kind, double probability) {
    return new Evidence(
        kind, probability, kind == FindingKind.BRIDGE ? 5 : 0, Optional.empty(), List.of());
  }

  @Test
  void aCleanRowShowsNothing() {
    for (int joint = 0; joint < 10; joint++) {
      assertThat(new DirtEvidence(onGreen().dirt(), LIMITS).of(joint, List.of())).isEmpty();
    }
  }

  @Test
  void landsLongerThanThePatchesAreSearchedAsFarAsTheseReach() {
    DirtSignals dirt = onGreen().dirt(new RowGeometry(0.2, 0.3, 1.9, -2.0));
    assertThat(new DirtEvidence(dirt, LIMITS).of(4, List.of())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"30,90,50", "20,40,120", "140,20,30", "60,20,70"})
  void aBallInAGapConcernsTheJointsOnBothSides(int red, int green, int blue) {
    DirtyRow row = new DirtyRow(10, red, green, blue).ball(4, 0.5, 0.2, 0.11);
    assertThat(seen(row, 4)).containsExactly(FindingKind.SOLDER_BALL);
    assertThat(seen(row, 5)).containsExactly(FindingKind.SOLDER_BALL);
    assertThat(seen(row, 3)).isEmpty();
    assertThat(seen(row, 6)).isEmpty();
  }

  /** Print, dust and glints look like a ball on grey: then nothing is said rather than a guess. */
  @Test
  void onAGreyBoardColourTellsNoBall() {
    assertThat(seen(new DirtyRow(10, 25, 25, 25).ball(4, 0.5, 0.2, 0.11), 4)).isEmpty();
  }

  @Test
  void aBallAheadOfALandConcernsThatJointAlone() {
    DirtyRow row = onGreen().ball(4, 0, 0.85, 0.1);
    assertThat(seen(row, 4)).containsExactly(FindingKind.SOLDER_BALL);
    assertThat(seen(row, 3)).isEmpty();
    assertThat(seen(row, 5)).isEmpty();
  }

  @Test
  void solderAcrossTheGapIsNoBall() {
    DirtyRow row = onGreen().ellipse(4, 0.5, -1, 0.3, 0.15, DirtyRow.SOLDER);
    row.ellipse(4, 0.5, -1, 0.05, 0.05, 250, 250, 250);
    assertThat(seen(row, 4)).isEmpty();
    assertThat(seen(row, 5)).isEmpty();
  }

  @Test
  void aBallIsNotToldWhereABridgeIsPossible() {
    DirtyRow row = onGreen().ball(4, 0.5, 0.2, 0.11);
    assertThat(seen(row, 4, chance(FindingKind.BRIDGE, 0.3))).isEmpty();
  }

  @Test
  void aFibreIsNeitherBallNorResidue() {
    DirtyRow row = onGreen().ellipse(4, 0.2, 0.9, 0.5, 0.03, 200, 200, 210);
    for (int joint = 3; joint <= 5; joint++) {
      assertThat(seen(row, joint)).isEmpty();
    }
  }

  @Test
  void aBrownFilmBesideALandIsResidueOfThatJoint() {
    DirtyRow row = new DirtyRow(10, 120, 120, 110).ellipse(4, 0.4, -0.5, 0.09, 0.3, DirtyRow.BROWN);
    assertThat(seen(row, 4)).containsExactly(FindingKind.RESIDUE);
    assertThat(seen(row, 3)).isEmpty();
  }

  @Test
  void aShadowIsNoResidue() {
    DirtyRow row = new DirtyRow(10, 120, 120, 110).ellipse(4, 0.4, -0.5, 0.09, 0.3, 60, 60, 55);
    assertThat(seen(row, 4)).isEmpty();
  }

  @Test
  void metalAndBareGoldInAGapAreNoResidue() {
    DirtyRow row = onGreen().ellipse(4, 0.4, -0.5, 0.09, 0.3, 230, 180, 90);
    assertThat(seen(row, 4)).doesNotContain(FindingKind.RESIDUE);
  }

  @Test
  void aDarkPitInASmoothFilletIsAVoid() {
    DirtyRow row = onGreen().ellipse(4, 0, 0.35, 0.07, 0.07, 40, 40, 40);
    assertThat(seen(row, 4)).containsExactly(FindingKind.VOID);
  }

  @Test
  void aPitIsNotToldInAJointWithAnotherFault() {
    DirtyRow row = onGreen().ellipse(4, 0, 0.35, 0.07, 0.07, 40, 40, 40);
    assertThat(seen(row, 4, chance(FindingKind.OPEN, 0.4))).isEmpty();
  }

  @Test
  void aDarkPlaceThatAllJointsShowIsTheLampsAndNoPit() {
    DirtyRow row = onGreen();
    for (int joint = 0; joint < 10; joint++) {
      row.ellipse(joint, 0, 0.35, 0.07, 0.07, 40, 40, 40);
    }
    assertThat(seen(row, 4)).isEmpty();
  }

  @Test
  void aRowOfFourIsNoPictureOfACleanOne() {
    DirtyRow row = new DirtyRow(4, 30, 90, 50).ball(1, 0.5, 0.2, 0.11);
    assertThat(seen(row, 1)).isEmpty();
  }
}
