package leadlight.row.tuning;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import leadlight.data.DataFile;

/**
 * The figures of {@code models/row/search.json}.
 *
 * @param source how and on what they were set
 * @param direction directions of edges to follow
 * @param comb coarse candidates to follow
 * @param bodyCues weights of the cues for the body's side
 * @param toe where toes and heels are looked for
 * @param spread uncertainties of a lead's place
 * @param acceptance when a row is reported
 */
public record RowTuning(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) Direction direction,
    @JsonProperty(required = true) Comb comb,
    @JsonProperty(required = true) BodyCues bodyCues,
    @JsonProperty(required = true) ToeTuning toe,
    @JsonProperty(required = true) Spread spread,
    @JsonProperty(required = true) AcceptanceTuning acceptance) {

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
   */
  public record Comb(
      @JsonProperty(required = true) double leastScore,
      @JsonProperty(required = true) double shareOfBest,
      @JsonProperty(required = true) int mostCandidates,
      @JsonProperty(required = true) int mostFits,
      @JsonProperty(required = true) double settled,
      @JsonProperty(required = true) double usualLean) {}

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
    return DataFile.builtIn("row/search.json").read(RowTuning.class);
  }
}
