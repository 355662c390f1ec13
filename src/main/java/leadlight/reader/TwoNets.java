package leadlight.reader;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.model.Chances;
import leadlight.model.Question;

/**
 * How the opinions of both networks become one: {@code models/reader/together.json}.
 *
 * @param sureBelow chance of a lack of solder at the row's middle joint, by the network that looks
 *     at joints alone, below which the row is surely soldered and likeness to it counts
 * @param badFrom the same chance from which the row is surely bad and likeness to it proves
 *     nothing; between the two the network that compares takes no doubt away, but it may make a
 *     call a doubt
 */
record TwoNets(
    @JsonProperty(required = true) Figure sureBelow,
    @JsonProperty(required = true) Figure badFrom) {

  /** Neither yes nor no. */
  private static final double DOUBT = 0.5;

  /** Keeps the logarithm of a chance of 0 or 1 finite. */
  private static final double LEAST = 1e-12;

  static TwoNets builtIn() {
    return DataFile.builtIn("reader/together.json").read(TwoNets.class);
  }

  /** One opinion a joint. */
  List<Chances> both(List<Chances> alone, List<Chances> beside) {
    double[] lack =
        alone.stream()
            .mapToDouble(it -> Math.max(it.of(Question.MISSING), it.of(Question.UNWETTED)))
            .sorted()
            .toArray();
    double middle = lack[lack.length / 2];
    Row row =
        middle < sureBelow.value() ? Row.SURE : middle < badFrom.value() ? Row.BETWEEN : Row.BAD;
    return IntStream.range(0, alone.size())
        .mapToObj(i -> joined(alone.get(i), beside.get(i), row))
        .toList();
  }

  /** What the row's middle joint says of the row. */
  private enum Row {
    SURE,
    BETWEEN,
    BAD
  }

  private static Chances joined(Chances alone, Chances beside, Row row) {
    return Chances.of(question -> joined(question, alone.of(question), beside.of(question), row));
  }

  /** Which name a lack of solder gets says nothing of good or bad: there both always count. */
  private static double joined(Question question, double alone, double beside, Row row) {
    double mean = ReaderFile.logistic((logOdds(alone) + logOdds(beside)) / 2);
    if (row == Row.SURE || question == Question.OPEN) {
      return mean;
    }
    return row == Row.BAD || alone <= DOUBT ? alone : Math.max(DOUBT, mean);
  }

  private static double logOdds(double chance) {
    double inside = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return Math.log(inside / (1 - inside));
  }
}
