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
 */
record TwoNets(@JsonProperty(required = true) Figure sureBelow) {

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
    return lack[lack.length / 2] >= sureBelow.value()
        ? alone
        : IntStream.range(0, alone.size())
            .mapToObj(i -> mean(alone.get(i), beside.get(i)))
            .toList();
  }

  private static Chances mean(Chances a, Chances b) {
    return Chances.of(
        question -> {
          double sum = logOdds(a.of(question)) + logOdds(b.of(question));
          return ReaderFile.logistic(sum / 2);
        });
  }

  private static double logOdds(double chance) {
    double inside = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return Math.log(inside / (1 - inside));
  }
}
