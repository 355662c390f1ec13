package leadlight.joint.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.joint.cut.GeometryFinder;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.RowLight;
import leadlight.model.row.Lead;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DisplacedLeadsTest {

  private static List<Lead> moved(DrawnJoints drawn) {
    try (Frame frame = drawn.frame()) {
      List<JointPatch> patches = drawn.patches(frame);
      RowGeometry geometry = new GeometryFinder(DrawnJoints.spec(), patches).find();
      RowLight light = RowLight.of(patches, geometry);
      List<LevelledPatch> levelled =
          patches.stream().map(patch -> LevelledPatch.of(patch, light)).toList();
      return LeadMover.moved(patches, new DisplacedLeads(levelled, geometry).place());
    }
  }

  private static double offset(Lead lead) {
    return (lead.toePx().x() - lead.landToePx().x()) / DrawnJoints.PITCH;
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.4, -0.25, 0.25, 0.4})
  void aLeadThatStandsOffItsLandIsFound(double pitches) {
    Lead lead = moved(new DrawnJoints().withLeadShifted(3, pitches)).get(3);
    assertThat(offset(lead)).isCloseTo(pitches, within(0.04));
    assertThat(lead.uAcrossPx()).isGreaterThanOrEqualTo(0.03 * DrawnJoints.PITCH);
  }

  @Test
  void leadsOnTheirLandsStayWhereTheRowHasThem() {
    List<Lead> leads = moved(new DrawnJoints().withLeadShifted(3, 0.4));
    for (int i = 0; i < leads.size(); i++) {
      if (i != 3) {
        assertThat(leads.get(i)).isEqualTo(DrawnJoints.leads().get(i));
      }
    }
  }
}
