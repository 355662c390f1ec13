package leadlight.statistics;

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
    return Wilson.of(share(), of).lower();
  }

  /** Upper end of the 95 % Wilson score interval; 1 if there is nothing to rate. */
  @Override
  public double upper() {
    return Wilson.of(share(), of).upper();
  }
}
