package leadlight.joint.cut;

/**
 * A joint's planes as shares of the row's range of light.
 *
 * @param patch the joint
 * @param light on the lead's middle
 * @param redGreen on the lead's middle
 * @param yellowBlue on the lead's middle
 * @param landLight on the land's middle
 * @param landRedGreen on the land's middle
 * @param landYellowBlue on the land's middle
 */
public record LevelledPatch(
    JointPatch patch,
    float[] light,
    float[] redGreen,
    float[] yellowBlue,
    float[] landLight,
    float[] landRedGreen,
    float[] landYellowBlue) {

  public static LevelledPatch of(JointPatch patch, RowLight rowLight) {
    return new LevelledPatch(
        patch,
        rowLight.levelled(patch.light()),
        rowLight.scaled(patch.redGreen()),
        rowLight.scaled(patch.yellowBlue()),
        rowLight.levelled(patch.landLight()),
        rowLight.scaled(patch.landRedGreen()),
        rowLight.scaled(patch.landYellowBlue()));
  }
}
