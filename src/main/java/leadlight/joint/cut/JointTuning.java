package leadlight.joint.cut;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;

/**
 * The figures by which lead, land and metal are looked for in a straightened row, lengths in
 * pitches: {@code models/joint/search.json}.
 *
 * @param source how and on what they were set
 * @param widths of lands and leads
 * @param foot the stretch of a foot that is looked at
 * @param placing leads sought across
 * @param moving when a lead is moved to where it was found
 * @param metal where a place is read that may be metal
 */
public record JointTuning(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) Widths widths,
    @JsonProperty(required = true) Foot foot,
    @JsonProperty(required = true) Placing placing,
    @JsonProperty(required = true) Moving moving,
    @JsonProperty(required = true) Metal metal) {

  private static final JointTuning BUILT_IN =
      DataFile.builtIn("joint/search.json").read(JointTuning.class);

  /**
   * Widths.
   *
   * @param leadWithinLand a lead is narrower than its land by at least this on either side
   */
  record Widths(
      @JsonProperty(required = true) Prior land,
      @JsonProperty(required = true) Prior lead,
      @JsonProperty(required = true) double leadWithinLand) {}

  /**
   * What half width is expected.
   *
   * @param spread standard deviation about the usual one
   */
  record Prior(
      @JsonProperty(required = true) double least,
      @JsonProperty(required = true) double most,
      @JsonProperty(required = true) double usual,
      @JsonProperty(required = true) double spread) {

    Prior below(double bound) {
      return new Prior(least, Math.min(most, bound), usual, spread);
    }

    double weight(double half) {
      double distance = (half - usual) / spread;
      return Math.exp(-distance * distance / 2);
    }
  }

  /**
   * The stretch of a foot, y from the toe, negative towards the body.
   *
   * @param toeEnd the toe's own edge and what lies ahead of it belong to no band
   * @param least feet reach at least so far
   * @param most and are looked at so far at most
   * @param ofHeel of the distance to the heel
   * @param halvesFrom where the toe half begins
   * @param halvesAt where it ends and the heel half begins, of the distance to the heel
   * @param halvesMost and at most
   */
  public record Foot(
      @JsonProperty(required = true) double toeEnd,
      @JsonProperty(required = true) double least,
      @JsonProperty(required = true) double most,
      @JsonProperty(required = true) double ofHeel,
      @JsonProperty(required = true) double halvesFrom,
      @JsonProperty(required = true) double halvesAt,
      @JsonProperty(required = true) double halvesMost) {}

  /**
   * How leads are sought that stand off their land or turned on it.
   *
   * @param reach to either side of the land's middle
   * @param edgeWeight of an edge as strong as the row's usual one
   * @param edgeMost of the usual edge, what at most counts
   * @param colourScale share of the row's range of light at which a top looks strange
   * @param awayCost a pitch, of being away from the land
   * @param turnCost a pitch, of a turned foot
   * @param turnMost between the middles of the halves
   * @param inside the top is compared this far inside its edges
   * @param leastEdge a weaker usual edge, a pitch, is noise
   * @param toeWeight of an edge across the lead's end as strong as the row's usual one
   * @param toeReach that edge is sought this far about the row's toe
   * @param toeProfile in a profile that reaches so far
   * @param toeInside and leaves out so much of the lead's sides
   */
  public record Placing(
      @JsonProperty(required = true) double reach,
      @JsonProperty(required = true) double edgeWeight,
      @JsonProperty(required = true) double edgeMost,
      @JsonProperty(required = true) double colourScale,
      @JsonProperty(required = true) double awayCost,
      @JsonProperty(required = true) double turnCost,
      @JsonProperty(required = true) double turnMost,
      @JsonProperty(required = true) double inside,
      @JsonProperty(required = true) double leastEdge,
      @JsonProperty(required = true) double toeWeight,
      @JsonProperty(required = true) double toeReach,
      @JsonProperty(required = true) double toeProfile,
      @JsonProperty(required = true) double toeInside) {}

  /**
   * When a lead is moved.
   *
   * @param leastMove a place that differs by less is left as it is
   * @param leastGain of the score, for scores scatter
   * @param movedU standard uncertainty across the lead of a moved toe
   */
  public record Moving(
      @JsonProperty(required = true) double leastMove,
      @JsonProperty(required = true) double leastGain,
      @JsonProperty(required = true) double movedU) {}

  /**
   * Where metal is read.
   *
   * @param withinLand share of the land, without its edges, where blur mixes it with the board
   * @param gap a gap's middle, from the land's
   * @param withinGap share of the half gap that is read: its edges are blurred, too
   * @param beyondFrom begin of the strip beyond the land's open end, from it
   * @param beyondTo its end
   * @param boardTo end of the strip that shows the board's colour; it begins with the other
   * @param boardLeast it is so long at least
   * @param ofFoot share of the foot beside which a gap is read
   */
  public record Metal(
      @JsonProperty(required = true) double withinLand,
      @JsonProperty(required = true) double gap,
      @JsonProperty(required = true) double withinGap,
      @JsonProperty(required = true) double beyondFrom,
      @JsonProperty(required = true) double beyondTo,
      @JsonProperty(required = true) double boardTo,
      @JsonProperty(required = true) double boardLeast,
      @JsonProperty(required = true) double ofFoot) {}

  public static JointTuning builtIn() {
    return BUILT_IN;
  }
}
