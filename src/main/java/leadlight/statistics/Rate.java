package leadlight.statistics;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;

/**
 * So many of so many.
 *
 * @param count how many
 * @param of out of how many; 0 means that there is nothing to rate
 */
public record Rate(int count, int of) implements Rated {

  /** Refuses a count below 0 or above {@code of}. */
  public Rate {
    if (count < 0 || count > of) {
      throw new IllegalArgumentException(count + " of " + of + " is no rate");
    }
  }

  /** The share; NaN if there is nothing to rate. */
  @Override
  public double share() {
    return (double) count / of;
  }

  /** Lower end of the 95 % Wilson score interval (Wilson 1927); 0 if there is nothing to rate. */
  @Override
  public double lower() {
    return of == 0
        ? 0
        : Math.max(
            0,
            BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(of, count, 0.05).getLowerBound());
  }

  /** Upper end of the 95 % Wilson score interval; 1 if there is nothing to rate. */
  @Override
  public double upper() {
    return of == 0
        ? 1
        : BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(of, count, 0.05).getUpperBound();
  }
}
