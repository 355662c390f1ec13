package leadlight.quality.sampling;

import java.util.Optional;
import leadlight.model.UserError;
import leadlight.quality.Words;
import leadlight.quality.sampling.SwitchingRules.LotResult;

/**
 * A sequential plan: after each unit the lot is accepted, refused or inspected further. Lines by
 * Wald 1947, Sequential Analysis, 5.2 (the principle of ISO 39511); it ends at the latest at {@link
 * #end()} units, refused above the middle line. Curves are exact for this plan, unit by unit.
 *
 * @param good share that should be accepted
 * @param producerRisk most probability that it is refused, before the end's own share
 * @param bad share that should be refused
 * @param consumerRisk most probability that it is accepted, likewise
 */
public record SequentialPlan(double good, double producerRisk, double bad, double consumerRisk)
    implements Inspection {

  /**
   * Checks the figures.
   *
   * @throws UserError if a share or a risk makes no sense, or the plan has too many units
   */
  public SequentialPlan {
    if (!(good > 0 && good < bad && bad < 1)) {
      throw new UserError("a sequential plan needs 0 < good < bad < 100 %; give two such");
    }
    if (!(producerRisk > 0 && consumerRisk > 0 && producerRisk + consumerRisk < 1)) {
      throw new UserError("two risks lie above 0 and together below 100 %; give two such");
    }
    int most = SamplingScheme.builtIn().sequential().mostUnits();
    int end = end(good, producerRisk, bad, consumerRisk);
    if (end > most) {
      throw new UserError(
          "a sequential plan for these shares may go on to %d units, more than %d; take shares that lie farther apart, or larger risks"
              .formatted(end, most));
    }
  }

  private double scale() {
    return Math.log(bad / good) + Math.log((1 - good) / (1 - bad));
  }

  /** Slope of both lines, nonconforming a unit. */
  public double slope() {
    return Math.log((1 - good) / (1 - bad)) / scale();
  }

  /** The acceptance line is the slope times the units, less this. */
  public double acceptIntercept() {
    return Math.log((1 - producerRisk) / consumerRisk) / scale();
  }

  /** The refusal line is the slope times the units, plus this. */
  public double refuseIntercept() {
    return Math.log((1 - consumerRisk) / producerRisk) / scale();
  }

  /** Most units: one and a half times the single plan's, here by the normal approximation. */
  public int end() {
    return end(good, producerRisk, bad, consumerRisk);
  }

  private static int end(double good, double producerRisk, double bad, double consumerRisk) {
    double zGood = quantile(producerRisk);
    double zBad = quantile(consumerRisk);
    double root =
        (zGood * Math.sqrt(good * (1 - good)) + zBad * Math.sqrt(bad * (1 - bad))) / (bad - good);
    return (int) Math.ceil(1.5 * root * root);
  }

  private static double quantile(double tail) {
    return org.apache.commons.statistics.distribution.NormalDistribution.of(0, 1)
        .inverseSurvivalProbability(tail);
  }

  /** Most nonconforming in so many units with which the lot is accepted; below 0 if none yet. */
  public int acceptAt(int units) {
    double line = units >= end() ? slope() * units : slope() * units - acceptIntercept();
    return (int) Math.floor(line + 1e-9);
  }

  /** Fewest nonconforming in so many units with which the lot is refused. */
  public int refuseAt(int units) {
    return units >= end()
        ? acceptAt(units) + 1
        : (int) Math.ceil(slope() * units + refuseIntercept() - 1e-9);
  }

  /**
   * What becomes of lots of a process.
   *
   * @param accepts probability of acceptance
   * @param sampleNumber average number of units inspected
   */
  public record Course(double accepts, double sampleNumber) {}

  /** Follows every way a lot of this share can go. */
  public Course course(double share) {
    int end = end();
    double[] at = new double[refuseAt(end) + 2];
    at[0] = 1;
    double accepted = 0;
    double units = 0;
    for (int n = 1; n <= end; n++) {
      double open = 0;
      for (double p : at) {
        open += p;
      }
      units += open;
      for (int d = at.length - 1; d >= 0; d--) {
        at[d] = at[d] * (1 - share) + (d > 0 ? at[d - 1] * share : 0);
      }
      for (int d = 0; d < at.length; d++) {
        if (d <= acceptAt(n)) {
          accepted += at[d];
          at[d] = 0;
        } else if (d >= refuseAt(n)) {
          at[d] = 0;
        }
      }
    }
    return new Course(accepted, units);
  }

  @Override
  public int units() {
    return end();
  }

  @Override
  public int nextStop(int inspected) {
    return inspected + 1;
  }

  @Override
  public Optional<LotResult> after(int inspected, int nonconforming) {
    return nonconforming <= acceptAt(inspected)
        ? Optional.of(LotResult.ACCEPTED)
        : nonconforming >= refuseAt(inspected) ? Optional.of(LotResult.REFUSED) : Optional.empty();
  }

  @Override
  public double accepts(double share) {
    return course(share).accepts();
  }

  @Override
  public boolean inFull() {
    return false;
  }

  @Override
  public String why() {
    return "sequential (Wald 1947, the principle of ISO 39511), %s good with risk %s, %s bad with risk %s"
        .formatted(
            Words.percent(good),
            Words.percent(producerRisk),
            Words.percent(bad),
            Words.percent(consumerRisk));
  }

  @Override
  public String against(int inspected, int nonconforming) {
    return "%d nonconforming in %d inspected, where the plan accepts with %s and refuses with %d or more."
        .formatted(
            nonconforming,
            inspected,
            acceptAt(inspected) < 0 ? "no number yet" : acceptAt(inspected) + " or fewer",
            refuseAt(inspected));
  }

  /** The plan in words. */
  @Override
  public String words() {
    return ("after n units accept with %.4f n - %.3f nonconforming or fewer, refuse with %.4f n +"
            + " %.3f or more, else inspect another; at %d units accept with %d or fewer")
        .formatted(slope(), acceptIntercept(), slope(), refuseIntercept(), end(), acceptAt(end()));
  }
}
