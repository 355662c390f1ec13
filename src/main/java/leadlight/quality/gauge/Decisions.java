package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Words;

/**
 * What deciding by this gauge risks, for a choice of guard bands (JCGM 106:2012, clause 9). A
 * reading within the guard band of a limit, on either side, is left to the bench, as {@code score
 * --guard-band} leaves it.
 */
public final class Decisions {

  /** Head of the table. */
  public static final List<String> HEADER =
      List.of(
          "guard band",
          "beyond the limit and accepted",
          "within and not accepted",
          "of these, called a defect",
          "left to the bench",
          "of 1000 joints, chance that one beyond passes");

  private static final int LOT = 1000;

  /** Levels in words and standard uncertainties; normal quantiles. */
  private static final Object[][] GUARDS = {
    {"none", 0.0},
    {"90 % sure", 1.2815515655},
    {"95 % sure", 1.6448536270},
    {"99 % sure", 2.3263478740},
  };

  private Decisions() {}

  /**
   * Lines of the table.
   *
   * @param mean of the process
   * @param processSd its standard deviation
   * @param u standard uncertainty of a reading, above 0
   */
  public static List<List<String>> lines(
      ClassLimit limit, double mean, double processSd, double u) {
    List<List<String>> lines = new ArrayList<>();
    for (Object[] guard : GUARDS) {
      double band = (double) guard[1] * u;
      Conformity risk =
          new Conformity(
              mean,
              processSd,
              u,
              limit.lower().orElse(Double.NEGATIVE_INFINITY),
              limit.value(),
              band);
      lines.add(
          List.of(
              guard[0] + " (" + Words.significant(band) + ")",
              fine(risk.falseAccept()),
              fine(risk.falseReject()),
              fine(risk.falseCall()),
              fine(risk.leftOpen()),
              fine(risk.falseAcceptInLot(LOT))));
    }
    return lines;
  }

  private static String fine(double share) {
    return share < 1e-8 ? "below 0.000001 %" : Words.significant(100 * share) + " %";
  }
}
