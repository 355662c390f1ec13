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
 * @param doubtFrom depth from which a leg is not vouched for
 * @param partedFrom depth from which it is parted from the solder
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
    @JsonProperty(required = true) Figure doubtFrom,
    @JsonProperty(required = true) Figure partedFrom) {

  /** Copies the list. */
  public PartingTuning {
    turnsDeg = List.copyOf(turnsDeg);
  }

  public static PartingTuning builtIn() {
    return DataFile.builtIn("legs/parting.json").read(PartingTuning.class);
  }
}
