package leadlight.scene;

import java.nio.file.Path;
import java.util.Map;
import leadlight.data.DataFile;

/**
 * What a set of scenes is drawn from: ranges are {least, most}; maps give each choice its weight.
 *
 * @param name stem of the pictures' names
 * @param pxPerPitch drawn evenly in its logarithm
 * @param blurOfPitch defocus over pitch, drawn evenly in its logarithm
 * @param blurSlope most change of blur along the picture, share
 * @param tiltDeg most tilt; the tilt's square is even
 * @param turnDeg most turn away from a level row
 * @param bodySide above, right, below, left
 * @param leads number of leads
 * @param pitchMm pitch
 * @param lamp ring, lowring, axial, dome, side, torch, joined by + for mixes
 * @param mask colours
 * @param finish bare lands: gold, tin, copper (preserved), solder (levelled)
 * @param lead plating: tin, gold, nickel
 * @param body body materials
 * @param gang share with one mask opening
 * @param print share with print beside the row
 * @param pour share with copper under the mask round the row
 * @param dull share of dull solder
 * @param residue share of pictures with residue
 * @param fibre share with a fibre
 * @param ball share with a ball
 * @param scorch share with scorched plastic
 * @param faultShare faults per joint in an ordinary row
 * @param badRow share of rows in which most joints are bad
 * @param fault kinds of fault
 * @param noise sensor noise
 * @param sharpen share of pictures sharpened by their camera
 */
public record SceneMix(
    String name,
    double[] pxPerPitch,
    double[] blurOfPitch,
    double blurSlope,
    double tiltDeg,
    double turnDeg,
    Map<String, Double> bodySide,
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
    double dull,
    double residue,
    double fibre,
    double ball,
    double scorch,
    double faultShare,
    double badRow,
    Map<Fault, Double> fault,
    double[] noise,
    double sharpen) {

  /** Kinds of fault that a mix may ask for. */
  public enum Fault {
    OPEN_RESTING,
    OPEN_FLOATING,
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
