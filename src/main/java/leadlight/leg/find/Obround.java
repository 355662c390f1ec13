package leadlight.leg.find;

/**
 * A round or long shape with round ends, as lands and holes of anchor legs are.
 *
 * @param widthMm extent across
 * @param heightMm extent along
 */
public record Obround(double widthMm, double heightMm) {

  private double radius() {
    return Math.min(widthMm, heightMm) / 2;
  }

  /** Half of the straight side. */
  private double straight() {
    return Math.abs(widthMm - heightMm) / 2;
  }

  /** Distance from its middle to its outline in a direction given by its unit vector. */
  public double reachMm(double dx, double dy) {
    double along = Math.abs(widthMm > heightMm ? dx : dy);
    double across = Math.abs(widthMm > heightMm ? dy : dx);
    if (across * straight() >= radius() * along) {
      return radius() / across;
    }
    double inside = radius() * radius() - straight() * straight() * across * across;
    return straight() * along + Math.sqrt(inside);
  }

  /** The outward normal, x and y, where its outline meets a direction. */
  double[] normal(double dx, double dy) {
    double reach = reachMm(dx, dy);
    boolean wide = widthMm > heightMm;
    double along = reach * (wide ? dx : dy);
    double across = reach * (wide ? dy : dx);
    double core = Math.max(-straight(), Math.min(straight(), along));
    double a = (along - core) / radius();
    double b = across / radius();
    return wide ? new double[] {a, b} : new double[] {b, a};
  }
}
