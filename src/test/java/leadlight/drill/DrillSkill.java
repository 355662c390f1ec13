package leadlight.drill;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.drill.sitting.Refused;
import leadlight.drill.skill.DrillRules;
import leadlight.drill.skill.Figures;
import leadlight.record.DrillRecord;
import leadlight.statistics.Rate;
import leadlight.statistics.Rated;
import leadlight.text.Messages;

/**
 * How well a history shows a known skill, and how the schedule shifts sets: the figures of
 * docs/drill.md.
 *
 * @param missedCovered intervals of a set's misses that hold the known chance
 * @param alarmsCovered the same of false alarms
 * @param recentCovered intervals of the last five sets' misses that hold their mean known chance
 * @param weakShare share of the weak findings among the defects of each set, mean over trainees
 */
record DrillSkill(Rate missedCovered, Rate alarmsCovered, Rate recentCovered, double[] weakShare) {

  private static final DrillWords SAID = new DrillWords(Messages.of("en"));

  private static final int RECENT = DrillRules.builtIn().recentSittings().value();

  /** So many trainees, each through all sets; the same every time. */
  static DrillSkill of(int trainees, boolean scheduled) {
    int[] held = new int[3];
    double[] weak = new double[SimulatedTrainee.SETS];
    for (int seed = 1; seed <= trainees; seed++) {
      SimulatedTrainee trainee = new SimulatedTrainee(seed, scheduled);
      List<SimulatedTrainee.Went> sets = new ArrayList<>();
      for (int set = 0; set < SimulatedTrainee.SETS; set++) {
        SimulatedTrainee.Went went = trainee.take(set);
        sets.add(went);
        Figures figures = Figures.of(went.answers()).orElseThrow();
        held[0] += holds(figures.missed(), went.known()) ? 1 : 0;
        held[1] += holds(figures.falseAlarm(), went.knownAlarm()) ? 1 : 0;
        weak[set] += went.weakShare() / trainees;
      }
      List<SimulatedTrainee.Went> last = sets.subList(sets.size() - RECENT, sets.size());
      Figures recent =
          Figures.of(last.stream().flatMap(d -> d.answers().stream()).toList()).orElseThrow();
      double known =
          last.stream().mapToDouble(SimulatedTrainee.Went::known).average().orElseThrow();
      held[2] += holds(recent.missed(), known) ? 1 : 0;
    }
    int sets = trainees * SimulatedTrainee.SETS;
    return new DrillSkill(
        new Rate(held[0], sets), new Rate(held[1], sets), new Rate(held[2], trainees), weak);
  }

  static boolean holds(Rated rate, double known) {
    return rate.lower() <= known && known <= rate.upper();
  }

  /**
   * Prints the tables of docs/drill.md: {@code mvn -q test-compile exec:java
   * -Dexec.mainClass=leadlight.drill.DrillSkill}. With a folder as argument it takes one trainee
   * into the record there instead, to look at the history.
   */
  public static void main(String[] args) throws Refused {
    if (args.length > 0) {
      recorded(Path.of(args[0]));
      return;
    }
    DrillSkill with = of(200, true);
    DrillSkill without = of(200, false);
    System.out.println("misses " + words(with.missedCovered));
    System.out.println("false alarms " + words(with.alarmsCovered));
    System.out.println("last five " + words(with.recentCovered));
    System.out.println("| set | share of weak findings | without schedule |\n|---|---|---|");
    for (int set = 0; set < with.weakShare.length; set++) {
      System.out.printf(
          Locale.ROOT,
          "| %d | %.2f | %.2f |%n",
          set + 1,
          with.weakShare[set],
          without.weakShare[set]);
    }
    one();
  }

  private static void recorded(Path folder) throws Refused {
    try (DrillRecord record = DrillRecord.open(folder)) {
      SimulatedTrainee trainee = new SimulatedTrainee(1, true);
      for (int set = 0; set < SimulatedTrainee.SETS; set++) {
        trainee.take(set, record);
      }
    }
  }

  private static void one() {
    SimulatedTrainee trainee = new SimulatedTrainee(1, true);
    System.out.println("| set | missed | 95 % | known | false alarms | 95 % | known |");
    for (int set = 0; set < SimulatedTrainee.SETS; set++) {
      SimulatedTrainee.Went went = trainee.take(set);
      Figures shown = Figures.of(went.answers()).orElseThrow();
      System.out.printf(
          Locale.ROOT,
          "| %d | %s | %.0f %% | %s | %.0f %% | %.1f |%n",
          set + 1,
          SAID.rate(shown.missed()),
          100 * went.known(),
          SAID.rate(shown.falseAlarm()),
          100 * went.knownAlarm(),
          went.weakShare());
    }
  }

  private static String words(Rate rate) {
    return String.format(
        Locale.ROOT,
        "%d of %d, %.1f %% (%.1f to %.1f)",
        rate.count(),
        rate.of(),
        100 * rate.share(),
        100 * rate.lower(),
        100 * rate.upper());
  }
}
