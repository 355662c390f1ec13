package leadlight.row.tuning;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import leadlight.data.DataFile;

/**
 * The figures of {@code models/row/search.json}.
 *
 * @param source how and on what they were set
 * @param zone how far the row's structure reaches along the leads
 * @param direction directions of edges to follow
 * @param comb coarse candidates to follow
 * @param same when two combs are the same row
 * @param lattice what does not fit the row's lattice
 * @param ends the places beyond a row's ends
 * @param refine each lead's own place
 * @param bodyCues weights of the cues for the body's side
 * @param toe where toes and heels are looked for
 * @param spread uncertainties of a lead's place
 * @param acceptance when a row is reported
 */
public record RowTuning(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) ZoneTuning zone,
    @JsonProperty(required = true) Direction direction,
    @JsonProperty(required = true) Comb comb,
    @JsonProperty(required = true) Same same,
    @JsonProperty(required = true) LatticeTuning lattice,
    @JsonProperty(required = true) Ends ends,
    @JsonProperty(required = true) Refine refine,
    @JsonProperty(required = true) BodyCues bodyCues,
    @JsonProperty(required = true) ToeTuning toe,
    @JsonProperty(required = true) Spread spread,
    @JsonProperty(required = true) AcceptanceTuning acceptance) {

  private static final RowTuning BUILT_IN =
      DataFile.builtIn("row/search.json").read(RowTuning.class);

  /**
   * The stretch along the leads, in pitches; locks as shares of the strongest band's.
   *
   * @param share of a band that still belongs to it
   * @param clearShare a band this strong counts in full; weaker ones may be mere traces
   * @param longestGap over which weaker bands are passed over
   * @param strongShare over a longer stretch that hardly shows, as a foot as dull as the board,
   *     only this will do
   * @param longestDull where it ends
   */
  public record ZoneTuning(
      @JsonProperty(required = true) double share,
      @JsonProperty(required = true) double clearShare,
      @JsonProperty(required = true) double longestGap,
      @JsonProperty(required = true) double strongShare,
      @JsonProperty(required = true) double longestDull) {}

  /**
   * When two combs are the same row, up to a few pitches along it.
   *
   * @param turn sine of the angle between them, below
   * @param pitchFrom ratio of their pitches, above
   * @param pitchTo and below
   * @param alongShare distance along the row, of the number of leads, below
   * @param across distance across, pitches, below
   */
  public record Same(
      @JsonProperty(required = true) double turn,
      @JsonProperty(required = true) double pitchFrom,
      @JsonProperty(required = true) double pitchTo,
      @JsonProperty(required = true) double alongShare,
      @JsonProperty(required = true) double across) {}

  /**
   * What does not fit the lattice has no weight, pitches.
   *
   * @param outlier along the row
   * @param outlierLeast but never less than this, however well the others agree
   * @param slopeOutlier along the leads
   * @param slopeOutlierLeast likewise
   */
  public record LatticeTuning(
      @JsonProperty(required = true) double outlier,
      @JsonProperty(required = true) double outlierLeast,
      @JsonProperty(required = true) double slopeOutlier,
      @JsonProperty(required = true) double slopeOutlierLeast) {}

  /**
   * The places beyond a row's ends.
   *
   * @param nextWeight of the first, next to which the last lead must stand
   * @param secondWeight of the second
   * @param runsOutBelow likeness of the lesser end, below which a row may run out of the picture
   * @param seenHalf half the width that must show, pitches
   * @param besideZone how far beyond the row's zone is looked, pitches
   */
  public record Ends(
      @JsonProperty(required = true) double nextWeight,
      @JsonProperty(required = true) double secondWeight,
      @JsonProperty(required = true) double runsOutBelow,
      @JsonProperty(required = true) double seenHalf,
      @JsonProperty(required = true) double besideZone) {}

  /**
   * Each lead's own place, lengths in pitches.
   *
   * @param halfWidth of the foot that is matched across
   * @param reach across
   * @param toeReach along the lead
   * @param footFrom begin of the stretch near the toe that tells the lead's middle, from the toe
   * @param footTo its end
   * @param landEdge left out at the land's open end
   * @param farCost a squared pitch, of the correlation
   * @param trustFrom correlation from which a lead's own place counts at all
   * @param trustOver and over how much more of it in full
   * @param toeTrust correlation from which a toe's own place counts
   * @param toeShare how much of it then
   */
  public record Refine(
      @JsonProperty(required = true) double halfWidth,
      @JsonProperty(required = true) double reach,
      @JsonProperty(required = true) double toeReach,
      @JsonProperty(required = true) double footFrom,
      @JsonProperty(required = true) double footTo,
      @JsonProperty(required = true) double landEdge,
      @JsonProperty(required = true) double farCost,
      @JsonProperty(required = true) double trustFrom,
      @JsonProperty(required = true) double trustOver,
      @JsonProperty(required = true) double toeTrust,
      @JsonProperty(required = true) double toeShare) {}

  /**
   * Directions of edges.
   *
   * @param apartRad two directions closer than this are one
   * @param peakShare least strength, of the strongest
   * @param most how many at most
   */
  public record Direction(
      @JsonProperty(required = true) double apartRad,
      @JsonProperty(required = true) double peakShare,
      @JsonProperty(required = true) int most) {}

  /**
   * Combs.
   *
   * @param leastScore least score of a comb to be fitted
   * @param shareOfBest the same, of the best at that reduction
   * @param mostCandidates how many are kept at a reduction
   * @param mostFits how many are fitted at a reduction
   * @param settled score of an accepted row from which on no finer picture is searched
   * @param usualLean standard deviation of how far leads lean along the row, pitches a pitch
   * @param leastLock mean phase lock from which a comb is looked at
   * @param beyondWeight how much each of four cells beyond the ends that agree takes off
   */
  public record Comb(
      @JsonProperty(required = true) double leastScore,
      @JsonProperty(required = true) double shareOfBest,
      @JsonProperty(required = true) int mostCandidates,
      @JsonProperty(required = true) int mostFits,
      @JsonProperty(required = true) double settled,
      @JsonProperty(required = true) double usualLean,
      @JsonProperty(required = true) double leastLock,
      @JsonProperty(required = true) double beyondWeight) {}

  /**
   * Standard uncertainties of a lead's place, in pitches unless said otherwise.
   *
   * @param across of a lead that matches perfectly
   * @param acrossMismatch added for a mismatch, times the root of (1 - match)
   * @param acrossUntrusted added where the match is too bad to move the lead
   * @param acrossPx in photo pixels
   * @param along of a toe matched along the lead
   * @param alongUntrusted of a toe that could not be matched
   * @param alongPx in photo pixels
   * @param axisWeights weights of {@code AxisCues}
   * @param latticeOff leads this far off the lattice mean that the lattice is wrong
   */
  public record Spread(
      @JsonProperty(required = true) double across,
      @JsonProperty(required = true) double acrossMismatch,
      @JsonProperty(required = true) double acrossUntrusted,
      @JsonProperty(required = true) double acrossPx,
      @JsonProperty(required = true) double along,
      @JsonProperty(required = true) double alongUntrusted,
      @JsonProperty(required = true) double alongPx,
      @JsonProperty(required = true) Map<String, Double> axisWeights,
      @JsonProperty(required = true) double latticeOff) {

    /** Copies the map. */
    public Spread {
      axisWeights = Map.copyOf(axisWeights);
    }
  }

  public static RowTuning builtIn() {
    return BUILT_IN;
  }
}
