package leadlight.reader;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.numeric.Logistic;

/**
 * How the opinions of two networks become one: {@code models/reader/together.json}. The network
 * that reads joints in their row decides; the one that compares with the row's typical joint may
 * make a call a doubt, unless the row is bad throughout. It takes no doubt away: a row bad
 * throughout is like its own typical joint.
 *
 * @param badFrom chance of a lack of solder at the row's middle joint from which the row is bad
 *     throughout and likeness to it proves nothing
 */
record TwoNets(@JsonProperty(required = true) Figure badFrom) {

  /** Neither yes nor no. */
  private static final double DOUBT = 0.5;

  /** Keeps the logarithm of a chance of 0 or 1 finite. */
  private static final double LEAST = 1e-12;

  static TwoNets builtIn() {
    return DataFile.builtIn("reader/together.json").read(TwoNets.class);
  }

  /** One opinion a joint. */
  List<Chances> both(List<Chances> inRow, List<Chances> beside) {
    double[] lack =
        inRow.stream()
            .mapToDouble(it -> Math.max(it.of(Question.MISSING), it.of(Question.UNWETTED)))
            .sorted()
            .toArray();
    if (lack[lack.length / 2] >= badFrom.value()) {
      return inRow;
    }
    return IntStream.range(0, inRow.size())
        .mapToObj(i -> joined(inRow.get(i), beside.get(i)))
        .toList();
  }

  private static Chances joined(Chances inRow, Chances beside) {
    return Chances.of(question -> joined(question, inRow.of(question), beside.of(question)));
  }

  /** Which name a lack of solder gets is no call. */
  private static double joined(Question question, double inRow, double beside) {
    if (question == Question.OPEN || inRow <= DOUBT) {
      return inRow;
    }
    return Math.max(DOUBT, Logistic.of((logOdds(inRow) + logOdds(beside)) / 2));
  }

  private static double logOdds(double chance) {
    double inside = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return Math.log(inside / (1 - inside));
  }
}
