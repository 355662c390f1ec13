package leadlight.joint.dirt;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * What counts as stain, spot, pit and turned lead: {@code models/joint/dirt.json}, which says of
 * each figure where it comes from.
 *
 * @param leastJoints joints from which a row's median is a picture of a clean joint
 * @param beyondLand how far the board is searched beyond the lands' open ends, pitches
 * @param freeTo greatest chance of a fault that would look alike, for a ball, pit or angle to be
 *     told
 * @param stain residue
 * @param spot solder balls
 * @param pit pits in a fillet
 * @param placement turned and overhanging leads
 */
public record DirtLimits(
    @JsonProperty(required = true) Figure leastJoints,
    @JsonProperty(required = true) Figure beyondLand,
    @JsonProperty(required = true) Figure freeTo,
    @JsonProperty(required = true) Stain stain,
    @JsonProperty(required = true) Spot spot,
    @JsonProperty(required = true) Pit pit,
    @JsonProperty(required = true) Placement placement) {

  public static DirtLimits builtIn() {
    return DataFile.builtIn("joint/dirt.json").read(DirtLimits.class);
  }

  /**
   * A translucent brown film.
   *
   * @param depth log ratio by which it dims blue more than red
   * @param brightens ratio by which red may still rise, less 1
   * @param greenShare how much of that depth green must be dimmed more than red
   * @param floor added to both sides of a ratio, share of the row's range
   * @param area square pitches times depth at which the chance is one half
   */
  public record Stain(
      @JsonProperty(required = true) Figure depth,
      @JsonProperty(required = true) Figure brightens,
      @JsonProperty(required = true) Figure greenShare,
      @JsonProperty(required = true) Figure floor,
      @JsonProperty(required = true) Figure area) {}

  /**
   * A ball of solder.
   *
   * @param strange difference from the row's typical picture from which a point belongs to a spot
   * @param leastPx points of the raster
   * @param mostWide longer side, pitches
   * @param elongation ratio of its axes
   * @param fill share of its bounding box
   * @param touches share of its rim on a land
   * @param greyGain how much nearer to metal's colour than the board
   * @param spans share of its peak that every column of the gap keeps
   * @param highlight its brightest point over the board where the chance is one half
   */
  public record Spot(
      @JsonProperty(required = true) Figure strange,
      @JsonProperty(required = true) Figure leastPx,
      @JsonProperty(required = true) Figure mostWide,
      @JsonProperty(required = true) Figure elongation,
      @JsonProperty(required = true) Figure fill,
      @JsonProperty(required = true) Figure touches,
      @JsonProperty(required = true) Figure greyGain,
      @JsonProperty(required = true) Figure spans,
      @JsonProperty(required = true) Figure highlight) {}

  /**
   * A pit in the toe's fillet.
   *
   * @param depth how much darker than its rim all around
   * @param spread how far above the row's median, in quartile distances
   * @param from share of the land ahead of the toe
   * @param to share of the land ahead of the toe
   */
  public record Pit(
      @JsonProperty(required = true) Figure depth,
      @JsonProperty(required = true) Figure spread,
      @JsonProperty(required = true) Figure from,
      @JsonProperty(required = true) Figure to) {}

  /**
   * Where a lead lies.
   *
   * @param skewDeg angle against the land
   * @param mostTurned share of a row's leads beyond that angle up to which angles are believed
   * @param toeOverhangMm length beyond the land
   * @param proven chance from which a limit counts as passed
   */
  public record Placement(
      @JsonProperty(required = true) Figure skewDeg,
      @JsonProperty(required = true) Figure mostTurned,
      @JsonProperty(required = true) Figure toeOverhangMm,
      @JsonProperty(required = true) Figure proven) {}
}
