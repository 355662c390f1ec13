package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leadlight.quality.Plot;
import leadlight.quality.Words;
import leadlight.statistics.ClusterRate;

/** What graders are worth against the reference, in a sentence and a plot. */
final class AgreeSummary {

  private AgreeSummary() {}

  /** Each grader's rates with what the limits say to them. */
  static String words(List<Appraisal> appraisals, AgreementLimits limits) {
    return appraisals.stream()
        .map(
            a ->
                "%s: right every time %s, missed %s, false alarm %s."
                    .formatted(
                        a.grader(),
                        of(a.effective(), limits.effectiveness()),
                        of(a.missed(), limits.miss()),
                        of(a.falseAlarm(), limits.falseAlarm())))
        .collect(Collectors.joining(" "));
  }

  private static String of(ClusterRate rate, AgreementLimits.Step step) {
    return rate.of() == 0
        ? "unknown"
        : Words.percent(rate.share()) + " (" + step.verdict(rate.share()) + ")";
  }

  /** Misses and false alarms of each grader. */
  static Plot plot(List<Appraisal> appraisals) {
    List<String> ticks = new ArrayList<>();
    List<double[]> shares = new ArrayList<>();
    List<double[]> ends = new ArrayList<>();
    for (Appraisal a : appraisals) {
      add(a.grader() + ", missed", a.missed(), ticks, shares, ends);
      add(a.grader() + ", false alarm", a.falseAlarm(), ticks, shares, ends);
    }
    return new Plot(
        "Wrong against the reference",
        "grader",
        "share, %",
        ticks,
        List.of(
            new Plot.Series("95 %", Plot.Style.SPANS, ends),
            new Plot.Series("share", Plot.Style.POINTS, shares)));
  }

  private static void add(
      String name,
      ClusterRate rate,
      List<String> ticks,
      List<double[]> shares,
      List<double[]> ends) {
    if (rate.of() == 0) {
      return;
    }
    double at = ticks.size();
    ticks.add(name);
    shares.add(new double[] {at, 100 * rate.share()});
    ends.add(new double[] {at, 100 * rate.lower()});
    ends.add(new double[] {at, 100 * rate.upper()});
  }
}
