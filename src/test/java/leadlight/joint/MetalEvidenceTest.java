package leadlight.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlight.joint.place.DrawnJoints;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Joint;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Reason;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class MetalEvidenceTest {

  private static List<Joint> joints(DrawnJoints drawn) {
    try (Frame frame = drawn.frame()) {
      return new JointMeter().cut(frame, DrawnJoints.spec(), DrawnJoints.row()).measured().joints();
    }
  }

  private static List<Integer> acrossTo(Joint joint) {
    return joint.evidence().stream()
        .filter(it -> it.measured().filter(NoteOfJoint.MetalAcross.class::isInstance).isPresent())
        .filter(it -> it.kind() == FindingKind.BRIDGE)
        .map(Evidence::neighbourPin)
        .toList();
  }

  @Test
  void eachJointOfAFloodedRowHasMetalToBothItsNeighbours() {
    List<Joint> joints = joints(new DrawnJoints().floodedBetween(0, 7));
    assertThat(acrossTo(joints.get(0))).containsExactly(2);
    assertThat(acrossTo(joints.get(3))).containsExactly(3, 5);
    assertThat(acrossTo(joints.get(7))).containsExactly(7);
  }

  @Test
  void theColourIsItsOwnReasonAndTheOpinionStaysAsItWasFitted() {
    Joint flooded = joints(new DrawnJoints().floodedBetween(0, 7)).get(3);
    Evidence seen =
        flooded.evidence().stream()
            .filter(it -> it.kind() == FindingKind.BRIDGE)
            .findFirst()
            .orElseThrow();
    assertThat(seen.reasons()).extracting(Reason::signal).containsExactly("gap_metal_across");
    assertThat(seen.probability())
        .isGreaterThan(flooded.byMeasures().orElseThrow().of(Question.BRIDGE_BEFORE));
  }

  @Test
  void anOpenGapHasNone() {
    assertThat(joints(new DrawnJoints()))
        .allSatisfy(joint -> assertThat(acrossTo(joint)).isEmpty());
  }
}
