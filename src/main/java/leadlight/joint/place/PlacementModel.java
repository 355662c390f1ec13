package leadlight.joint.place;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * How leads are placed and how surely: {@code models/joint/placement.json}, its trends fitted by
 * {@code models/joint/place.py}.
 *
 * @param source on what the trends were fitted
 * @param chances how likely places are before and after looking
 * @param shifts how places become shifts on the board
 * @param alongRow toe as found less true toe along the row, common to the row, pitches
 * @param alongLead the same along the lead, positive ahead
 * @param uAlongRow logarithm of the standard uncertainty of a toe along the row, pitches
 * @param uAlongLead the same along the lead
 */
public record PlacementModel(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) Chances chances,
    @JsonProperty(required = true) Shifts shifts,
    @JsonProperty(required = true) Trend alongRow,
    @JsonProperty(required = true) Trend alongLead,
    @JsonProperty(required = true) Trend uAlongRow,
    @JsonProperty(required = true) Trend uAlongLead) {

  public static PlacementModel builtIn() {
    return DataFile.builtIn("joint/placement.json").read(PlacementModel.class);
  }

  /**
   * Figures of {@link PlaceChances}, lengths in pitches.
   *
   * @param near spread of leads about their row
   * @param turned spread of the turn of feet that lie with their row
   * @param displaced mean distance and turn of leads that do not
   * @param displacedShare share of such leads
   * @param mostTurn greatest turn of a foot from end to end
   * @param sharpness logarithm of the likelihood a unit of score
   * @param floor score below which scores say nothing
   * @param overlap how far neighbours may seem to overlap
   * @param believed how surely a neighbour's place is believed
   */
  record Chances(
      @JsonProperty(required = true) Figure near,
      @JsonProperty(required = true) Figure turned,
      @JsonProperty(required = true) Figure displaced,
      @JsonProperty(required = true) Figure displacedShare,
      @JsonProperty(required = true) Figure mostTurn,
      @JsonProperty(required = true) Figure sharpness,
      @JsonProperty(required = true) Figure floor,
      @JsonProperty(required = true) Figure overlap,
      @JsonProperty(required = true) Figure believed) {}

  /**
   * Figures of {@link LeadMeter}, lengths in pitches.
   *
   * @param sameFrom places less far apart are one, and the row's finer one holds
   * @param sameTurn feet less turned lie straight
   * @param displacedFrom a lead farther from its row's usual offset tells nothing of the rest
   * @param sameU a place less sure than this is no support for the row's
   * @param knownU a lead given more surely than this is known
   * @param parallax most offset of all leads from their lands that a tilted view explains
   * @param commonU standard uncertainty of a shift by what the row has in common
   * @param movedU the same of a lead that lies elsewhere than the row's finder has it, beside
   * @param shiftBias shift of a displaced lead as measured, less the true one, away from its land
   * @param marginBias half the lead's less half the land's width as measured, less the true one
   * @param halfWidthU standard uncertainty of half a measured width
   * @param statedU standard uncertainty of half a width that the connector states
   * @param footBias by how much a foot is measured too long, its heel being where it turns up
   * @param footU standard uncertainty of its heel
   * @param lackWidens by how much less sure a place along the row is where no fillet holds the lead
   * @param unsureFrom leads found less surely than this do not tell how they lie on their lands
   */
  public record Shifts(
      @JsonProperty(required = true) Figure sameFrom,
      @JsonProperty(required = true) Figure sameTurn,
      @JsonProperty(required = true) Figure displacedFrom,
      @JsonProperty(required = true) Figure sameU,
      @JsonProperty(required = true) Figure knownU,
      @JsonProperty(required = true) Figure parallax,
      @JsonProperty(required = true) Figure commonU,
      @JsonProperty(required = true) Figure movedU,
      @JsonProperty(required = true) Figure shiftBias,
      @JsonProperty(required = true) Figure marginBias,
      @JsonProperty(required = true) Figure halfWidthU,
      @JsonProperty(required = true) Figure statedU,
      @JsonProperty(required = true) Figure footBias,
      @JsonProperty(required = true) Figure footU,
      @JsonProperty(required = true) Figure lackWidens,
      @JsonProperty(required = true) Figure unsureFrom) {}
}
