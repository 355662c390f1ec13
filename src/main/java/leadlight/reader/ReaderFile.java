package leadlight.reader;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.model.FaultChances;

/**
 * What belongs to a trained network: {@code models/reader/reader.json}.
 *
 * @param source what it was trained on
 * @param sha256 of {@code reader.onnx}, lower-case hexadecimal
 * @param scales from each score to a chance
 * @param unlikeFrom strangeness from which a joint is unlike all that it learned from
 */
record ReaderFile(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) String sha256,
    @JsonProperty(required = true) Scales scales,
    @JsonProperty(required = true) double unlikeFrom) {

  static ReaderFile builtIn() {
    return DataFile.builtIn("reader/reader.json").read(ReaderFile.class);
  }

  /**
   * One scale a question, in the order of the network's scores; the seventh of these is
   * strangeness.
   */
  record Scales(
      @JsonProperty(required = true) Scale missing,
      @JsonProperty(required = true) Scale unwetted,
      @JsonProperty(required = true) Scale open,
      @JsonProperty(required = true) Scale excess,
      @JsonProperty(required = true) Scale bridgeBefore,
      @JsonProperty(required = true) Scale bridgeAfter,
      @JsonProperty(required = true) Scale ball,
      @JsonProperty(required = true) Scale overQuarter,
      @JsonProperty(required = true) Scale overHalf,
      @JsonProperty(required = true) Scale photographed) {

    FaultChances chances(float[] score) {
      return new FaultChances(
          missing.chance(score[0]),
          unwetted.chance(score[1]),
          open.chance(score[2]),
          excess.chance(score[3]),
          bridgeBefore.chance(score[4]),
          bridgeAfter.chance(score[5]),
          ball.chance(score[7]),
          overQuarter.chance(score[8]),
          overHalf.chance(score[9]));
    }
  }

  /**
   * From a score to a chance: the logistic function of {@code slope * score + shift}, fitted on
   * pictures not learned from (Platt 1999, Probabilistic outputs for support vector machines).
   */
  record Scale(
      @JsonProperty(required = true) double slope, @JsonProperty(required = true) double shift) {

    double chance(double score) {
      return logistic(slope * score + shift);
    }
  }

  static double logistic(double logOdds) {
    return 1 / (1 + Math.exp(-logOdds));
  }
}
