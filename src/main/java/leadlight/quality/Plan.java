package leadlight.quality;

/**
 * A single sampling plan.
 *
 * @param size units to inspect
 * @param accept most nonconforming units with which the lot is accepted
 * @param refuse fewest with which it is refused; above {@code accept + 1} only on reduced
 *     inspection, where a count in between accepts the lot and ends reduced inspection
 * @param why where the plan comes from, for people
 */
public record Plan(int size, int accept, int refuse, String why) {

  /** Refuses a plan that cannot be carried out. */
  public Plan {
    if (size < 1 || accept < 0 || refuse <= accept) {
      throw new IllegalArgumentException(
          "no plan: n %d, Ac %d, Re %d".formatted(size, accept, refuse));
    }
  }

  /** "inspect 50, accept with 1 or fewer, refuse with 2 or more". */
  public String words() {
    return "inspect %d, accept the lot with %s nonconforming, refuse it with %d or more"
        .formatted(size, accept == 0 ? "0" : accept + " or fewer", refuse);
  }
}
