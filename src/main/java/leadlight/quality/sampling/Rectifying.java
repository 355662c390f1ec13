package leadlight.quality.sampling;

/**
 * What leaves if refused lots are sorted fully and what is found is mended (Dodge and Romig 1959).
 */
public final class Rectifying {

  private static final int STEPS = 2000;

  private Rectifying() {}

  /** The worst average. */
  public record Limit(double quality, double at) {}

  /** Average outgoing quality for a process of this share. */
  public static double outgoing(Plan plan, int lot, double share) {
    return share * Operating.ofProcess(plan, share) * (1 - (double) plan.size() / lot);
  }

  /** The average outgoing quality limit (AOQL), the worst over all processes. */
  public static Limit limit(Plan plan, int lot) {
    double most = Math.min(1, 3 * Operating.qualityAt(plan, 0.10));
    double best = 0;
    for (int i = 1; i <= STEPS; i++) {
      double share = most * i / STEPS;
      best = outgoing(plan, lot, share) > outgoing(plan, lot, best) ? share : best;
    }
    double low = Math.max(0, best - most / STEPS);
    double high = Math.min(1, best + most / STEPS);
    for (int i = 0; i < 60; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (outgoing(plan, lot, a) < outgoing(plan, lot, b)) {
        low = a;
      } else {
        high = b;
      }
    }
    double at = (low + high) / 2;
    return new Limit(outgoing(plan, lot, at), at);
  }
}
