package leadlight.quality.sampling;

import java.util.Optional;
import leadlight.quality.sampling.SwitchingRules.LotResult;

/**
 * A single sampling plan.
 *
 * @param size units to inspect
 * @param accept most nonconforming units with which the lot is accepted
 * @param refuse fewest with which it is refused; above {@code accept + 1} only on reduced
 *     inspection, where a count in between accepts the lot and ends reduced inspection
 * @param why where the plan comes from, for people
 */
public record Plan(int size, int accept, int refuse, String why) implements Inspection {

  /** Refuses a plan that cannot be carried out. */
  public Plan {
    if (size < 1 || accept < 0 || refuse <= accept) {
      throw new IllegalArgumentException(
          "no plan: n %d, Ac %d, Re %d".formatted(size, accept, refuse));
    }
  }

  @Override
  public int units() {
    return size;
  }

  @Override
  public int nextStop(int inspected) {
    return size;
  }

  @Override
  public Optional<LotResult> after(int inspected, int bad) {
    if (inspected != size) {
      throw new IllegalArgumentException(inspected + " were inspected, not " + size);
    }
    return Optional.of(
        bad <= accept
            ? LotResult.ACCEPTED
            : bad < refuse ? LotResult.ACCEPTED_ENDS_REDUCED : LotResult.REFUSED);
  }

  @Override
  public double accepts(double share) {
    return Operating.ofProcess(this, share);
  }

  @Override
  public double qualityAt(double acceptance) {
    return Operating.qualityAt(this, acceptance);
  }

  @Override
  public boolean inFull() {
    return true;
  }

  @Override
  public String against(int inspected, int bad) {
    return "%d nonconforming in %d inspected; the plan accepts with %d or fewer and refuses with %d or more."
        .formatted(bad, size, accept, refuse);
  }

  /** "inspect 50, accept with 1 or fewer, refuse with 2 or more". */
  @Override
  public String words() {
    return "inspect %d, accept the lot with %s nonconforming, refuse it with %d or more"
        .formatted(size, accept == 0 ? "0" : accept + " or fewer", refuse);
  }
}
