package leadlight.joint.cut;

import java.util.List;

/**
 * A row's joint place by place in the middle, on the lands' raster, as shares of the row's range.
 *
 * @param light as {@link LevelledPatch#landLight}
 * @param redGreen as {@link LevelledPatch#landRedGreen}
 * @param yellowBlue as {@link LevelledPatch#landYellowBlue}
 */
public record TypicalJoint(float[] light, float[] redGreen, float[] yellowBlue) {

  public static TypicalJoint of(List<LevelledPatch> joints) {
    return new TypicalJoint(
        Stats.middle(joints.stream().map(LevelledPatch::landLight).toList()),
        Stats.middle(joints.stream().map(LevelledPatch::landRedGreen).toList()),
        Stats.middle(joints.stream().map(LevelledPatch::landYellowBlue).toList()));
  }
}
