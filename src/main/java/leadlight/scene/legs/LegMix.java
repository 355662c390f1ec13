package leadlight.scene.legs;

import java.nio.file.Path;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.model.BoardSide;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.Material;

/**
 * What a set of scenes of anchor legs is drawn from: ranges are {least, most}, or {least, from, to,
 * most}; maps give each choice its weight.
 *
 * @param name stem of the pictures' names
 * @param side component or solder
 * @param connector ids of connectors that have legs in plated holes
 * @param alone share of pictures of one leg alone
 * @param widthPx width of the picture of all legs
 * @param aloneLandPx length of the land of a leg alone
 * @param blurPx defocus, standard deviation, drawn evenly in its logarithm
 * @param tiltDeg tilt
 * @param turnDeg turn, either way
 * @param lamp ring, lowring, axial, dome, side, torch, joined by + for mixes
 * @param mask colours
 * @param finish bare lands
 * @param leg plating of the legs
 * @param condition how legs are soldered
 * @param residue share of pictures with residue
 * @param pool share of pictures with pools of clear flux
 * @param uneven share of pictures whose solder and legs are uneven
 * @param dull share of dull solder
 * @param mosaic share of cameras with a colour mosaic
 * @param noise sensor noise
 * @param sharpen share of pictures sharpened by their camera
 */
public record LegMix(
    String name,
    Map<BoardSide, Double> side,
    Map<String, Double> connector,
    double alone,
    double[] widthPx,
    double[] aloneLandPx,
    double[] blurPx,
    double[] tiltDeg,
    double[] turnDeg,
    Map<String, Double> lamp,
    Map<Mask, Double> mask,
    Map<Material, Double> finish,
    Map<Material, Double> leg,
    Map<LegPlan.Condition, Double> condition,
    double residue,
    double pool,
    double uneven,
    double dull,
    double mosaic,
    double[] noise,
    double sharpen) {

  /**
   * Reads a mix file.
   *
   * @throws leadlight.model.UserError if it cannot be read or says something unknown
   */
  public static LegMix read(Path file) {
    return DataFile.at(file).read(LegMix.class);
  }
}
