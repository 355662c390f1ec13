package leadlight.quality.sampling;

import java.util.Optional;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * A double sampling plan: a first sample decides where it is clear, a second one where it is not.
 *
 * @param first units of the first sample
 * @param accept accepted with so many or fewer in it
 * @param refuse refused with so many or more in it
 * @param second units of the second sample
 * @param acceptBoth accepted with so many or fewer in both together
 * @param why where it comes from
 */
public record DoublePlan(int first, int accept, int refuse, int second, int acceptBoth, String why)
    implements Inspection {

  /** Refuses what cannot be carried out. */
  public DoublePlan {
    if (first < 1 || second < 1 || accept < 0 || refuse <= accept || acceptBoth < accept) {
      throw new IllegalArgumentException("no double plan: " + why);
    }
  }

  @Override
  public double accepts(double share) {
    BinomialDistribution one = BinomialDistribution.of(first, share);
    BinomialDistribution two = BinomialDistribution.of(second, share);
    double sum = one.cumulativeProbability(accept);
    for (int d = accept + 1; d < refuse && d <= acceptBoth; d++) {
      sum += one.probability(d) * two.cumulativeProbability(acceptBoth - d);
    }
    return sum;
  }

  /** Average sample number, without curtailment. */
  public double sampleNumber(double share) {
    BinomialDistribution one = BinomialDistribution.of(first, share);
    double again = one.cumulativeProbability(refuse - 1) - one.cumulativeProbability(accept);
    return first + second * again;
  }

  @Override
  public int units() {
    return first + second;
  }

  @Override
  public int nextStop(int inspected) {
    return inspected < first ? first : units();
  }

  @Override
  public Optional<LotResult> after(int inspected, int bad) {
    if (inspected == first) {
      return bad <= accept
          ? Optional.of(LotResult.ACCEPTED)
          : bad >= refuse ? Optional.of(LotResult.REFUSED) : Optional.empty();
    }
    if (inspected != units()) {
      throw new IllegalArgumentException(inspected + " were inspected, not one or both samples");
    }
    return Optional.of(bad <= acceptBoth ? LotResult.ACCEPTED : LotResult.REFUSED);
  }

  @Override
  public boolean inFull() {
    return false;
  }

  @Override
  public String against(int inspected, int bad) {
    return inspected == first
        ? "%d nonconforming in the first sample of %d; it accepts with %d or fewer and refuses with %d or more."
            .formatted(bad, first, accept, refuse)
        : "%d nonconforming in both samples, %d units; they accept with %d or fewer."
            .formatted(bad, inspected, acceptBoth);
  }

  /** "inspect 50, accept with 1 or fewer, refuse with 4 or more; between them ...". */
  @Override
  public String words() {
    return ("inspect %d, accept with %s, refuse with %d or more; between them inspect %d"
            + " more, accept with %s in both, else refuse")
        .formatted(first, upTo(accept), refuse, second, upTo(acceptBoth));
  }

  private static String upTo(int bad) {
    return bad == 0 ? "0" : bad + " or fewer";
  }
}
