package leadlight.scene.legs;

import java.util.List;
import java.util.Optional;
import leadlight.model.BoardSide;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.MetalSpec;

/**
 * Everything a scene of anchor legs is made of; the same spec gives the same bytes. Lengths in
 * millimetres; u to the right, v down, as the board is seen from the photographed side, z up from
 * that face.
 *
 * @param name file stem of the picture
 * @param seed drives every texture and the sensor's noise
 * @param side which side of the board is seen
 * @param connector id of the part
 * @param mask colour of the board
 * @param finish bare lands
 * @param openingMm mask clearance round a land
 * @param metal surfaces of legs and solder
 * @param lamps at least one
 * @param camera size, pose and sensor
 * @param shell what stands over the component side; absent on the other
 * @param legs the legs
 * @param dirt residue, pools of flux, fibres
 */
public record LegSceneSpec(
    String name,
    long seed,
    BoardSide side,
    String connector,
    Mask mask,
    Material finish,
    double openingMm,
    MetalSpec metal,
    List<LampSpec> lamps,
    CameraSpec camera,
    Optional<Shell> shell,
    List<LegPlan> legs,
    List<Dirt> dirt) {

  /** Copies the lists and refuses a scene without legs or light. */
  public LegSceneSpec {
    lamps = List.copyOf(lamps);
    legs = List.copyOf(legs);
    dirt = dirt == null ? List.of() : List.copyOf(dirt);
    if (legs.isEmpty() || lamps.isEmpty()) {
      throw new IllegalArgumentException("a scene of legs needs a leg and a lamp");
    }
    if (name == null || !name.matches("[A-Za-z0-9._-]+")) {
      throw new IllegalArgumentException("name must do as a file name");
    }
  }

  /**
   * The connector's shell: a box, from which an arm goes to each leg.
   *
   * @param leftMm its edges
   * @param topMm the same
   * @param rightMm the same
   * @param bottomMm the same
   * @param heightMm of its upper side over the board
   * @param armMm height of the arms' upper sides, and of the legs' bends
   */
  record Shell(
      double leftMm,
      double topMm,
      double rightMm,
      double bottomMm,
      double heightMm,
      double armMm) {}
}
