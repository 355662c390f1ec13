package leadlight.leg.measure;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * Settings of the search for a dark line around a leg: {@code models/legs/parting.json}.
 *
 * @param reach how far to either side the line's banks may lie, share of the land's longer side
 * @param leastReachPx the same in pixels of the photo, for its blur widens a line
 * @param thinnest thinnest leg, share of the hole's shorter side
 * @param thickest thickest
 * @param shortest shortest leg, share of the hole's longer side
 * @param turnsDeg turns of a leg in its hole
 * @param dim light against the land's bright end below which darkness is noise
 * @param deepest depth of a line from which deeper counts no more
 * @param lightest depth, below 0, of a place lighter than its banks from which lighter counts no
 *     more
 * @param round a hole longer than wide by less does not tell which way its leg lies
 * @param doubtFrom depth from which a leg is not vouched for
 * @param partedFrom depth from which it is parted from the solder
 * @param acrossSector the search for a line in one sector alone
 */
public record PartingTuning(
    @JsonProperty(required = true) Figure reach,
    @JsonProperty(required = true) Figure leastReachPx,
    @JsonProperty(required = true) Figure thinnest,
    @JsonProperty(required = true) Figure thickest,
    @JsonProperty(required = true) Figure shortest,
    @JsonProperty(required = true) List<Double> turnsDeg,
    @JsonProperty(required = true) Figure dim,
    @JsonProperty(required = true) Figure deepest,
    @JsonProperty(required = true) Figure lightest,
    @JsonProperty(required = true) Figure round,
    @JsonProperty(required = true) Figure doubtFrom,
    @JsonProperty(required = true) Figure partedFrom,
    @JsonProperty(required = true) AcrossSector acrossSector) {

  /**
   * A line that the way from the land's middle to the hole's edge crosses.
   *
   * @param wide how near a wide line's banks lie, share of the land's longer side
   * @param narrow the same of a narrow one
   * @param to how far a line is looked for, share of the way
   * @param dim light against the land's bright end below which darkness is noise
   */
  public record AcrossSector(
      @JsonProperty(required = true) Figure wide,
      @JsonProperty(required = true) Figure narrow,
      @JsonProperty(required = true) Figure to,
      @JsonProperty(required = true) Figure dim) {}

  /** Copies the list. */
  public PartingTuning {
    turnsDeg = List.copyOf(turnsDeg);
  }

  public static PartingTuning builtIn() {
    return DataFile.builtIn("legs/parting.json").read(PartingTuning.class);
  }
}
