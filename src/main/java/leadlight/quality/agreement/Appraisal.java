package leadlight.quality.agreement;

import java.util.List;
import java.util.Optional;
import leadlight.quality.Estimate;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.statistics.ClusterRate;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * One grader against the reference (AIAG MSA, 4th edition, attribute study).
 *
 * @param grader who
 * @param trials repeats
 * @param repeated items with the same verdict in every trial; empty with one trial
 * @param effective items judged as the reference in every trial
 * @param missed grades "good" of items that are bad, of all decided grades of bad items
 * @param falseAlarm grades "bad" of items that are good, of all decided grades of good items
 * @param undecided grades that decide nothing, of all
 * @param kappa against the reference, as if every grade stood alone
 * @param kappaByItem the same, its interval by photo or item
 * @param ac1 Gwet's AC1, likewise
 */
public record Appraisal(
    String grader,
    int trials,
    Optional<ClusterRate> repeated,
    ClusterRate effective,
    ClusterRate missed,
    ClusterRate falseAlarm,
    ClusterRate undecided,
    Optional<Estimate> kappa,
    Coefficient kappaByItem,
    Coefficient ac1) {

  static Appraisal of(Grades grades, Reading reading, String grader, String reference) {
    int trials = grades.trials(grader);
    ClusterRate.Builder missed = new ClusterRate.Builder();
    ClusterRate.Builder alarm = new ClusterRate.Builder();
    ClusterRate.Builder effective = new ClusterRate.Builder();
    ClusterRate.Builder open = new ClusterRate.Builder();
    for (String item : grades.complete(grader)) {
      Optional<Grade> truth = grades.truth(reference, item, reading);
      if (truth.isEmpty() || reading.side(truth.get()).equals(Reading.OPEN)) {
        continue;
      }
      String is = reading.side(truth.get());
      List<String> said = grades.of(grader, item).stream().map(reading::side).toList();
      String cluster = Grades.cluster(item);
      effective.add(cluster, said.stream().allMatch(is::equals));
      ClusterRate.Builder wrong = is.equals(Reading.BAD) ? missed : alarm;
      for (String side : said) {
        open.add(cluster, side.equals(Reading.OPEN));
        if (!side.equals(Reading.OPEN)) {
          wrong.add(cluster, !side.equals(is));
        }
      }
    }
    PairCalls pair = Pairing.pair(grades, reading, grader, reference, true);
    return new Appraisal(
        grader,
        trials,
        Repeats.of(grades, reading, grader),
        effective.rate(),
        missed.rate(),
        alarm.rate(),
        open.rate(),
        pair.table().kappa(),
        pair.kappa(),
        pair.ac1());
  }

  /**
   * Whether misses and false alarms differ in number more than chance explains: two-sided exact
   * McNemar (1947) test; empty if there are neither.
   */
  public Optional<Double> biasP() {
    int n = missed.count() + falseAlarm.count();
    if (n == 0) {
      return Optional.empty();
    }
    int fewer = Math.min(missed.count(), falseAlarm.count());
    return Optional.of(
        Math.min(1, 2 * BinomialDistribution.of(n, 0.5).cumulativeProbability(fewer)));
  }
}
