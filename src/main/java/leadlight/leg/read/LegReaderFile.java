package leadlight.leg.read;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;

/**
 * What belongs to the leg reader's network: {@code models/legs/reader.json}.
 *
 * @param source what it was trained on
 * @param sha256 of the network beside it, lower-case hexadecimal
 * @param degrees reaches along the leg's outline that it was asked for
 * @param shares reaches over land and hole
 * @param wetted from scores to chances, of the leg's outline
 * @param covered of the land
 * @param open of the hole
 * @param component of the component side
 * @param fullFrom level of a channel from which it is burnt out
 */
record LegReaderFile(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) String sha256,
    @JsonProperty(required = true) List<Double> degrees,
    @JsonProperty(required = true) List<Double> shares,
    @JsonProperty(required = true) Scale wetted,
    @JsonProperty(required = true) Scale covered,
    @JsonProperty(required = true) Scale open,
    @JsonProperty(required = true) Scale component,
    @JsonProperty(required = true) double fullFrom) {

  /** Copies the lists. */
  LegReaderFile {
    degrees = List.copyOf(degrees);
    shares = List.copyOf(shares);
  }

  /**
   * The logistic function of {@code slope * score + shift} (Platt 1999, Probabilistic outputs for
   * support vector machines).
   *
   * @param source what it was fitted on
   */
  record Scale(
      @JsonProperty(required = true) double slope,
      @JsonProperty(required = true) double shift,
      @JsonProperty(required = true) String source) {}

  static LegReaderFile builtIn() {
    return DataFile.builtIn("legs/reader.json").read(LegReaderFile.class);
  }
}
