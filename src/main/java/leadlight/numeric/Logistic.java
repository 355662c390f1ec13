package leadlight.numeric;

/** The logistic function: from the logarithm of odds to a chance. */
public final class Logistic {

  private Logistic() {}

  public static double of(double logOdds) {
    return 1 / (1 + Math.exp(-logOdds));
  }
}
