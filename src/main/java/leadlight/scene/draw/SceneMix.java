package leadlight.scene.draw;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.Material;

/**
 * What a set of scenes is drawn from: ranges are {least, most}, or {least, from, to, most} with
 * three quarters or more between from and to; maps give each choice its weight.
 *
 * @param name stem of the pictures' names
 * @param pxPerPitch drawn evenly in its logarithm
 * @param blurOfPitch defocus over pitch, drawn evenly in its logarithm
 * @param blurSlope most change of blur along the picture, share
 * @param tiltDeg tilt
 * @param turnDeg turn away from a level row, either way
 * @param bodySide above, right, below, left
 * @param connector ids of known connectors, and "none" for rows of none
 * @param leads number of leads, of rows of no connector
 * @param pitchMm pitch
 * @param lamp ring, lowring, axial, dome, side, torch, joined by + for mixes
 * @param mask colours
 * @param finish bare lands: gold, tin, copper (preserved), solder (levelled)
 * @param lead plating: tin, gold, nickel, or solder where they were dipped
 * @param body body materials
 * @param gang share with one mask opening
 * @param print share with print beside the row
 * @param pour share with copper under the mask round the row
 * @param paired share of boards on which copper under the mask joins neighbouring lands
 * @param crowd share with other parts beside the row
 * @param dull share of dull solder
 * @param residue share of pictures with residue
 * @param fibre share with a fibre
 * @param ball share with a ball
 * @param scorch share with scorched plastic
 * @param byHand share of rows soldered unevenly, some fillets full
 * @param faultShare faults per joint in an ordinary row
 * @param badRow share of rows in which most joints are bad
 * @param fault kinds of fault
 * @param mosaic share of cameras with a colour mosaic on their sensor
 * @param noise sensor noise
 * @param sharpen share of pictures sharpened by their camera
 * @param whole rows with one fault throughout; absent for none
 * @param rough uneven looks of sound and faulty joints alike; absent for none
 */
public record SceneMix(
    String name,
    double[] pxPerPitch,
    double[] blurOfPitch,
    double blurSlope,
    double[] tiltDeg,
    double[] turnDeg,
    Map<String, Double> bodySide,
    Map<String, Double> connector,
    Map<String, Double> leads,
    Map<String, Double> pitchMm,
    Map<String, Double> lamp,
    Map<Mask, Double> mask,
    Map<Material, Double> finish,
    Map<Material, Double> lead,
    Map<Material, Double> body,
    double gang,
    double print,
    double pour,
    double paired,
    double crowd,
    double dull,
    double residue,
    double fibre,
    double ball,
    double scorch,
    double byHand,
    double faultShare,
    double badRow,
    Map<Fault, Double> fault,
    double mosaic,
    double[] noise,
    double sharpen,
    Optional<Whole> whole,
    Optional<Rough> rough) {

  /** Refuses a choice without anything to choose from, and ranges of other than two or four. */
  public SceneMix {
    for (Map<?, Double> choice :
        Arrays.asList(bodySide, connector, leads, pitchMm, lamp, mask, finish, lead, body, fault)) {
      if (choice == null || choice.isEmpty()) {
        throw new IllegalArgumentException(
            "a mix needs weights for each of body_side, connector, leads, pitch_mm, lamp, mask, "
                + "finish, lead, body and fault");
      }
      if (choice.values().stream().anyMatch(weight -> weight == null || !(weight >= 0))) {
        throw new IllegalArgumentException("weights of a mix are 0 or more, not as in " + choice);
      }
    }
    for (double[] range : Arrays.asList(pxPerPitch, blurOfPitch, tiltDeg, turnDeg, noise)) {
      if (range == null || range.length != 2 && range.length != 4) {
        throw new IllegalArgumentException(
            "px_per_pitch, blur_of_pitch, tilt_deg, turn_deg and noise are [least, most] or "
                + "[least, from, to, most]");
      }
    }
  }

  /**
   * Rows in which every joint has the same fault.
   *
   * @param share of all rows
   * @param alike share of these in which leads rest on solder of one height, as it comes from a
   *     stencil or a levelled board
   * @param bodyless share of rows without any lead that have no body behind them either
   * @param fault kinds of fault
   */
  record Whole(double share, double alike, double bodyless, Map<Fault, Double> fault) {}

  /**
   * Looks that say nothing of a joint.
   *
   * @param uneven share of pictures whose solder and leads are uneven in shine, shade and grain
   * @param pool share of pictures with pools of clear flux over lands and gaps
   */
  record Rough(double uneven, double pool) {}

  /** Kinds of fault that a mix may ask for. */
  public enum Fault {
    OPEN_RESTING,
    OPEN_FLOATING,
    TORN_LAND,
    LIFTED_LAND,
    STARVED_TOE,
    STARVED_HEEL,
    STARVED_SIDE,
    EXCESS,
    BRIDGE_TOE,
    BRIDGE_MID,
    BRIDGE_HEEL,
    BRIDGE_HAIR,
    BRIDGE_FULL,
    MISSING,
    SHIFTED,
    BENT,
    PIT
  }

  /**
   * Reads a mix file.
   *
   * @throws leadlight.model.UserError if it cannot be read or says something unknown
   */
  public static SceneMix read(Path file) {
    return DataFile.at(file).read(SceneMix.class);
  }
}
