package leadlight.quality;

import java.util.List;
import java.util.Optional;
import leadlight.statistics.Rate;
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
 * @param kappa against the reference, trials pooled
 */
public record Appraisal(
    String grader,
    int trials,
    Optional<Rate> repeated,
    Rate effective,
    Rate missed,
    Rate falseAlarm,
    Rate undecided,
    Optional<Estimate> kappa) {

  static Appraisal of(Grades grades, Reading reading, String grader, String reference) {
    int trials = grades.trials(grader);
    Tally missed = new Tally();
    Tally alarm = new Tally();
    Tally effective = new Tally();
    Tally open = new Tally();
    for (String item : grades.complete(grader)) {
      Optional<Grade> truth = grades.of(reference, item, 1);
      if (truth.isEmpty() || reading.side(truth.get()).equals(Reading.OPEN)) {
        continue;
      }
      String is = reading.side(truth.get());
      List<String> said = grades.of(grader, item).stream().map(reading::side).toList();
      effective.add(said.stream().allMatch(is::equals));
      Tally wrong = is.equals(Reading.BAD) ? missed : alarm;
      for (String side : said) {
        open.add(side.equals(Reading.OPEN));
        if (!side.equals(Reading.OPEN)) {
          wrong.add(!side.equals(is));
        }
      }
    }
    return new Appraisal(
        grader,
        trials,
        Repeats.of(grades, reading, grader),
        effective.rate(),
        missed.rate(),
        alarm.rate(),
        open.rate(),
        Pairing.table(grades, reading, grader, reference, true).kappa());
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

  /** Counts hits of tries. */
  static final class Tally {
    private int count;
    private int of;

    void add(boolean hit) {
      of++;
      count += hit ? 1 : 0;
    }

    Rate rate() {
      return new Rate(count, of);
    }
  }
}
