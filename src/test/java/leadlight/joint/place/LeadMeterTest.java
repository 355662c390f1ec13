package leadlight.joint.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.SizeMeter;
import leadlight.joint.cut.GeometryFinder;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.RowLight;
import leadlight.joint.cut.Straightener;
import leadlight.joint.cut.TypicalJoint;
import leadlight.model.Measure;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.row.Lead;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeadMeterTest {

  private static final PlacementModel MODEL = PlacementModel.builtIn();
  private static final double PITCH_MM = DrawnJoints.spec().pitchMm();

  private static PlacedRow placed(DrawnJoints drawn, List<Lead> asFound, double heelY) {
    try (Frame frame = drawn.frame()) {
      List<JointPatch> patches = new Straightener(DrawnJoints.spec(), asFound).patches(frame);
      RowGeometry found = new GeometryFinder(DrawnJoints.spec(), patches).find();
      RowGeometry geometry =
          new RowGeometry(found.leadHalf(), found.landHalf(), found.ahead(), heelY);
      RowLight light = RowLight.of(patches, geometry);
      List<LevelledPatch> levelled =
          patches.stream().map(patch -> LevelledPatch.of(patch, light)).toList();
      return new LeadMeter(DrawnJoints.spec(), MODEL, levelled, geometry)
          .measure(asFound, TypicalJoint.of(levelled));
    }
  }

  private static PlacedRow placed(DrawnJoints drawn) {
    return placed(drawn, DrawnJoints.leads(), -1.8);
  }

  private static Quantity overhang(DrawnJoints drawn, PlacedRow row, int index) {
    try (Frame frame = drawn.frame()) {
      return new SizeMeter(DrawnJoints.spec(), row.geometry(), MODEL.shifts())
          .measure(drawn.patches(frame).get(index), row.leads().get(index))
          .get(Measure.SIDE_OVERHANG);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.45, -0.25, 0.25, 0.45})
  void aDisplacedLeadIsMeasuredWhereItLies(double pitches) {
    DrawnJoints drawn = new DrawnJoints().withLeadShifted(3, pitches);
    PlacedRow row = placed(drawn);
    assertThat(row.leads().get(3).toe().pitches()).isCloseTo(pitches, within(0.03));
    double beyond = Math.abs(pitches) + DrawnJoints.LEAD_HALF - DrawnJoints.LAND_HALF;
    Quantity overhang = overhang(drawn, row, 3);
    assertThat(overhang.value()).isCloseTo(beyond * PITCH_MM, within(2 * overhang.u()));
    assertThat(overhang.u()).isLessThan(0.03);
  }

  @Test
  void aHeelThatTheRowHasTooNearTheToeHidesNoDisplacedLead() {
    PlacedRow row = placed(new DrawnJoints().withLeadShifted(3, 0.4), DrawnJoints.leads(), -0.4);
    assertThat(row.leads().get(3).toe().pitches()).isCloseTo(0.4, within(0.03));
  }

  @Test
  void aBareLandThatLooksLikeALeadIsNotTakenForIt() {
    PlacedRow row = placed(new DrawnJoints().withLeadShiftedOnALandLikeIt(3, -0.4));
    PlacedLead.Shift toe = row.leads().get(3).toe();
    assertThat(toe.pitches()).isCloseTo(-0.4, within(2 * toe.u()));
  }

  @Test
  void aLeadInsideItsLandHasANegativeOverhang() {
    DrawnJoints drawn = new DrawnJoints();
    Quantity overhang = overhang(drawn, placed(drawn), 2);
    double inside = (DrawnJoints.LEAD_HALF - DrawnJoints.LAND_HALF) * PITCH_MM;
    assertThat(overhang.value()).isCloseTo(inside, within(2 * overhang.u())).isNegative();
  }

  @Test
  void whatHidesALeadMakesItsPlaceUnsure() {
    DrawnJoints drawn = new DrawnJoints().covered(3, 3);
    PlacedRow row = placed(drawn);
    assertThat(row.leads().get(3).toe().u()).isGreaterThan(2 * row.leads().get(1).toe().u());
  }

  @Test
  void landsThatTheRowHasStretchedShiftNoLead() {
    List<Lead> stretched = new ArrayList<>();
    double middle = (DrawnJoints.leads().size() - 1) / 2.0;
    for (Lead lead : DrawnJoints.leads()) {
      double off = 0.02 * DrawnJoints.PITCH * (lead.pin() - 1 - middle);
      stretched.add(
          new Lead(
              lead.pin(),
              lead.toePx(),
              lead.heelPx(),
              moved(lead.landToePx(), off),
              moved(lead.landHeelPx(), off),
              lead.match(),
              lead.uAcrossPx(),
              lead.uAlongPx()));
    }
    for (PlacedLead lead : placed(new DrawnJoints(), stretched, -1.8).leads()) {
      assertThat(lead.toe().pitches()).isCloseTo(0, within(0.02));
    }
  }

  private static PointPx moved(PointPx point, double x) {
    return new PointPx(point.x() + x, point.y());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.04, 0.2})
  void anOffsetOfAllLeadsCountsBeyondWhatATiltedViewExplains(double pitches) {
    DrawnJoints drawn = new DrawnJoints();
    List<Lead> shifted = new ArrayList<>();
    for (Lead lead : DrawnJoints.leads()) {
      drawn.withLeadShifted(lead.pin() - 1, pitches);
      shifted.add(
          new Lead(
              lead.pin(),
              moved(lead.toePx(), pitches * DrawnJoints.PITCH),
              moved(lead.heelPx(), pitches * DrawnJoints.PITCH),
              lead.landToePx(),
              lead.landHeelPx(),
              lead.match(),
              lead.uAcrossPx(),
              lead.uAlongPx()));
    }
    double explained = MODEL.shifts().parallax().value();
    for (PlacedLead lead : placed(drawn, shifted, -1.8).leads()) {
      assertThat(lead.toe().pitches()).isCloseTo(Math.max(0, pitches - explained), within(0.02));
    }
  }
}
