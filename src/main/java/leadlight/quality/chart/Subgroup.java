package leadlight.quality.chart;

/**
 * A subgroup of a chart.
 *
 * @param name day, connector, operator, pin
 * @param size units or opportunities, 1 or more
 * @param count nonconforming units or defects
 */
public record Subgroup(String name, int size, int count) {

  /** Refuses an empty subgroup. */
  public Subgroup {
    if (size < 1 || count < 0) {
      throw new IllegalArgumentException(name + ": " + count + " of " + size);
    }
  }
}
