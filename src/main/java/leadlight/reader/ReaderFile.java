package leadlight.reader;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import leadlight.data.DataFile;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.numeric.Logistic;

/**
 * What belongs to a trained network: a .json file of {@code models/reader}.
 *
 * @param source what it was trained on
 * @param sha256 of the network beside it, lower-case hexadecimal
 * @param scores names of the network's scores in their order: questions and "unlike"
 * @param scales from the score of each question to a chance
 * @param unlikeFrom strangeness from which a joint is unlike all that it learned from
 */
record ReaderFile(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) String sha256,
    @JsonProperty(required = true) List<String> scores,
    @JsonProperty(required = true) Map<String, Scale> scales,
    @JsonProperty(required = true) double unlikeFrom) {

  /** The network that looks at each joint alone. */
  static final String ALONE = "alone";

  /** The network that weighs what the first saw of a joint with what it saw of its row. */
  static final String IN_ROW = "in-row";

  /** The network that looks at each joint beside the row's typical one. */
  static final String BESIDE = "beside";

  /** The score of how photographed, not drawn, a joint looks. */
  private static final String PHOTOGRAPHED = "photographed";

  /** The score of how unlike known joints a joint is. */
  private static final String UNLIKE = "unlike";

  /** Every question needs a score and a scale. */
  ReaderFile {
    scores = List.copyOf(scores);
    for (Question question : Question.values()) {
      if (!scores.contains(question.id()) || !scales.containsKey(question.id())) {
        throw new IllegalArgumentException("no score or no scale for " + question.id());
      }
    }
  }

  static ReaderFile builtIn(String name) {
    return DataFile.builtIn("reader/" + name + ".json").read(ReaderFile.class);
  }

  /**
   * From a score to a chance: the logistic function of {@code slope * score + shift}, fitted on
   * pictures not learned from (Platt 1999, Probabilistic outputs for support vector machines).
   */
  record Scale(
      @JsonProperty(required = true) double slope, @JsonProperty(required = true) double shift) {

    double chance(double score) {
      return Logistic.of(slope * score + shift);
    }
  }

  /** Place of a question's score. */
  int place(Question question) {
    return scores.indexOf(question.id());
  }

  /** The chances that a joint's scores come to. */
  Chances chances(float[] score) {
    return Chances.of(question -> scales.get(question.id()).chance(score[place(question)]));
  }

  /** How unlike known joints its scores say that a joint is, 0 to 1. */
  double strangeness(float[] score) {
    return Logistic.of(score[scores.indexOf(UNLIKE)]);
  }

  /** How photographed, not drawn, its scores say that a joint looks, 0 to 1. */
  double photographed(float[] score) {
    return scales.get(PHOTOGRAPHED).chance(score[scores.indexOf(PHOTOGRAPHED)]);
  }
}
