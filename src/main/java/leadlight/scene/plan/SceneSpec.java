package leadlight.scene.plan;

import java.util.List;
import leadlight.scene.camera.CameraSpec;

/**
 * Everything a scene is made of; the same spec gives the same bytes. Lengths in millimetres, angles
 * in radians unless the name says degrees, row frame: u along the row from pin 1, v from the body
 * (negative) to the open end, v = 0 at the nominal toe, z up from the board.
 *
 * @param name file stem of the picture
 * @param seed drives every texture and the sensor's noise
 * @param part leads and lands
 * @param body what stands behind the leads
 * @param board mask, finish, traces, print
 * @param metal surfaces of leads and solder
 * @param lamps at least one
 * @param camera size, pose and sensor
 * @param joints one per land, in pin order
 * @param bridges metal between neighbours
 * @param dirt residue, fibres and balls
 * @param shot which of several photos of the row it is; null for the only one
 */
public record SceneSpec(
    String name,
    long seed,
    PartSpec part,
    BodySpec body,
    BoardSpec board,
    MetalSpec metal,
    List<LampSpec> lamps,
    CameraSpec camera,
    List<JointPlan> joints,
    List<Bridge> bridges,
    List<Dirt> dirt,
    Shot shot) {

  /** Most that a land's toe may rise over the land's length. Common practice, no source. */
  private static final double STEEPEST = 0.3;

  /** Copies the lists and refuses a scene that contradicts itself. */
  public SceneSpec {
    lamps = listOf(lamps);
    joints = listOf(joints);
    bridges = listOf(bridges);
    dirt = listOf(dirt);
    require(part != null && body != null && board != null, "a scene needs part, body and board");
    require(metal != null && camera != null, "a scene needs metal and camera");
    require(name != null && name.matches("[A-Za-z0-9._-]+"), "name must do as a file name");
    require(!lamps.isEmpty(), "a scene needs at least one lamp");
    require(
        joints.size() == part.landsAtMm().length,
        "a scene needs one joint per land: " + part.landsAtMm().length + ", has " + joints.size());
    for (JointPlan joint : joints) {
      require(
          joint.landRaisedMm() == null || joint.landRaisedMm() <= STEEPEST * part.landLengthMm(),
          "a land of %s mm cannot be raised by land_raised_mm %s: solder would break first"
              .formatted(part.landLengthMm(), joint.landRaisedMm()));
    }
    for (Bridge bridge : bridges) {
      require(
          bridge.pin() >= 1 && bridge.pin() < joints.size(),
          "a bridge starts at a pin that has a neighbour, not at " + bridge.pin());
      require(
          joints.get(bridge.pin() - 1).landRaisedMm() == null
              && joints.get(bridge.pin()).landRaisedMm() == null,
          "a bridge would hold a raised land down: no land_raised_mm beside bridge "
              + bridge.pin());
    }
  }

  /** The only photo of its row. */
  public SceneSpec(
      String name,
      long seed,
      PartSpec part,
      BodySpec body,
      BoardSpec board,
      MetalSpec metal,
      List<LampSpec> lamps,
      CameraSpec camera,
      List<JointPlan> joints,
      List<Bridge> bridges,
      List<Dirt> dirt) {
    this(name, seed, part, body, board, metal, lamps, camera, joints, bridges, dirt, null);
  }

  /** Another photo of the row, the name ending otherwise. */
  public SceneSpec again(String ending, List<LampSpec> newLamps, CameraSpec newCamera) {
    return new SceneSpec(
        name + ending,
        seed,
        part,
        body,
        board,
        metal,
        newLamps,
        newCamera,
        joints,
        bridges,
        dirt,
        shot);
  }

  /** The row in another state. */
  public SceneSpec with(
      List<JointPlan> newJoints, List<Bridge> newBridges, List<Dirt> newDirt, Shot newShot) {
    return new SceneSpec(
        name,
        seed,
        part,
        body,
        board,
        metal,
        lamps,
        camera,
        newJoints,
        newBridges,
        newDirt,
        newShot);
  }

  private static <T> List<T> listOf(List<T> given) {
    return given == null ? List.of() : List.copyOf(given);
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException(what);
    }
  }
}
