package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.quality.agreement.AgreementStudy;
import leadlight.quality.agreement.Appraisal;
import leadlight.quality.agreement.Calls;
import leadlight.quality.agreement.Coefficient;
import leadlight.quality.agreement.CrossTable;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgreementTest {

  private static final Reading PASS_FAIL = new Reading(Set.of("0"), Set.of("1"), Set.of(), false);

  private static AgreementStudy aiag() {
    Grades grades = Grades.of(Grades.read(Outside.FOLDER.resolve("aiag-attribute.csv"), PASS_FAIL));
    return new AgreementStudy(grades, PASS_FAIL, Optional.of("reference"));
  }

  private static CrossTable table(int[]... rows) {
    List<String> names = List.of("a", "b", "c").subList(0, rows.length);
    return new CrossTable(
        names, Arrays.stream(rows).map(r -> Arrays.stream(r).boxed().toList()).toList());
  }

  private static Grade grade(String item, String grader, String verdict) {
    return new Grade(item, grader, 1, verdict, Optional.empty());
  }

  /** AIAG MSA, 4th edition, attribute study: cross-tabs and kappa between appraisers. */
  @ParameterizedTest
  @CsvSource({"A,B,44,6,3,97,.86", "B,C,42,5,9,94,.79", "A,C,43,7,8,92,.78"})
  void aiagAppraisersAgainstEachOther(
      String one, String other, int bothBad, int first, int second, int bothGood, double kappa) {
    AgreementStudy.Pair pair =
        aiag().pairs().stream()
            .filter(p -> p.one().equals(one) && p.other().equals(other))
            .findFirst()
            .orElseThrow();

    assertThat(pair.table().counts().get(0)).startsWith(bothBad, first);
    assertThat(pair.table().counts().get(1)).startsWith(second, bothGood);
    double found = pair.table().kappa().orElseThrow().value();
    assertThat(found).isCloseTo(kappa, within(.005));
    assertThat(found).isCloseTo(Outside.figure("aiag kappa " + one + other), within(1e-12));
  }

  /** The same study: against the reference, with effectiveness, misses and false alarms. */
  @ParameterizedTest
  @CsvSource({
    "A,45,5,3,97,.88,84,6.3,4.9",
    "B,45,2,3,100,.92,90,6.3,2.0",
    "C,42,9,6,93,.77,80,12.5,8.8"
  })
  void aiagAppraisersAgainstTheReference(
      String name,
      int bothBad,
      int alarms,
      int misses,
      int bothGood,
      double kappa,
      double effective,
      double missPercent,
      double alarmPercent) {
    AgreementStudy study = aiag();
    Appraisal appraisal =
        study.appraisals().stream().filter(a -> a.grader().equals(name)).findFirst().orElseThrow();
    CrossTable table = study.againstReference(name).orElseThrow();

    assertThat(table.counts().get(0)).startsWith(bothBad, alarms);
    assertThat(table.counts().get(1)).startsWith(misses, bothGood);
    assertThat(appraisal.kappa().orElseThrow().value()).isCloseTo(kappa, within(.005));
    assertThat(appraisal.kappa().orElseThrow().value())
        .isCloseTo(Outside.figure("aiag kappa " + name), within(1e-12));
    assertThat(100 * appraisal.effective().share()).isCloseTo(effective, within(1e-9));
    assertThat(100 * appraisal.missed().share()).isCloseTo(missPercent, within(.051));
    assertThat(100 * appraisal.falseAlarm().share()).isCloseTo(alarmPercent, within(.05));
    assertThat(appraisal.biasP().orElseThrow())
        .isCloseTo(Outside.figure("aiag mcnemar " + name), within(1e-12));
  }

  /** Cohen 1968, Psychological Bulletin 70:213: N 200, plain and weighted 0/1/3/6. */
  @Test
  void cohenPlainAndWeighted() {
    CrossTable table = table(new int[] {88, 10, 2}, new int[] {14, 40, 6}, new int[] {18, 10, 12});
    Estimate plain = table.kappa().orElseThrow();
    Estimate weighted =
        table
            .weightedKappa(List.of(List.of(0., 1., 3.), List.of(1., 0., 6.), List.of(3., 6., 0.)))
            .orElseThrow();

    assertThat(table.agreement().orElseThrow()).isCloseTo(.70, within(1e-12));
    assertThat(plain.value()).isCloseTo(.492, within(5e-4));
    assertThat(weighted.value()).isCloseTo(.348, within(5e-4));
    assertInterval(plain, "kappa cohen");
    assertInterval(weighted, "weighted kappa cohen");
  }

  /** Cohen 1960, Educational and Psychological Measurement 20:37; the table from memory. */
  @Test
  void cohenLessThanChance() {
    Estimate kappa =
        table(new int[] {25, 13, 12}, new int[] {12, 2, 16}, new int[] {3, 15, 2})
            .kappa()
            .orElseThrow();

    assertThat(kappa.value()).isCloseTo(-.092, within(5e-4));
    assertInterval(kappa, "kappa negative");
  }

  /** Two inspectors, 10,000 solder joints: exercise in Devore, Probability and Statistics. */
  @Test
  void tenThousandJoints() {
    CrossTable table = table(new int[] {316, 408}, new int[] {435, 8841});
    Estimate kappa = table.kappa().orElseThrow();

    assertThat(table.total()).isEqualTo(10_000);
    assertThat(100 * table.agreement().orElseThrow()).isCloseTo(91.6, within(.05));
    assertThat(kappa.value()).isCloseTo(.383, within(5e-4));
    assertInterval(kappa, "kappa joints");
  }

  private static void assertInterval(Estimate estimate, String outside) {
    assertThat(estimate.value()).isCloseTo(Outside.figure(outside, 0), within(1e-12));
    assertThat(estimate.lower()).isCloseTo(Outside.figure(outside, 1), within(1e-9));
    assertThat(estimate.upper()).isCloseTo(Outside.figure(outside, 2), within(1e-9));
  }

  /** Fleiss 1971, Psychological Bulletin 76:378: 30 patients, 6 raters, 5 diagnoses. */
  @Test
  void fleissThirtyPatients() throws IOException {
    List<List<Integer>> counts =
        Files.readAllLines(Outside.FOLDER.resolve("fleiss-1971.csv")).stream()
            .skip(1)
            .map(l -> Arrays.stream(l.split(",")).map(Integer::valueOf).toList())
            .toList();
    Calls calls =
        new Calls(
            IntStream.range(0, 30)
                .mapToObj(i -> new Calls.Item("patient " + i, counts.get(i)))
                .toList());
    Coefficient kappa = calls.kappa();
    Estimate interval = kappa.interval().orElseThrow();

    assertThat(counts).hasSize(30);
    assertThat(kappa.value().orElseThrow()).isCloseTo(.430, within(5e-4));
    assertThat(kappa.value().orElseThrow())
        .isCloseTo(Outside.figure("kappa fleiss"), within(1e-12));
    // The jackknife's error, on the scale of log(1 - kappa) with t of 29.
    double distance = 1 - interval.value();
    assertThat(Math.log((1 - interval.lower()) / distance) * distance / 2.0452296421327)
        .isCloseTo(Outside.figure("jackknife error fleiss"), within(1e-12));
    assertR(kappa, 0);
    assertR(calls.ac1(), 1);
  }

  /** R, straight from the papers of Fleiss 1971 and Gwet 2008: kappa and AC1 with their ends. */
  private static void assertR(Coefficient coefficient, int which) {
    Estimate interval = coefficient.interval().orElseThrow();
    assertThat(interval.value()).isCloseTo(OutsideR.figure("fleiss", which), within(1e-12));
    assertThat(interval.lower()).isCloseTo(OutsideR.figure("fleiss lower", which), within(1e-9));
    assertThat(interval.upper()).isCloseTo(OutsideR.figure("fleiss upper", which), within(1e-9));
  }

  /** R, the AIAG study: Cohen's kappa of A and B with its ends, an item left out at a time. */
  @Test
  void repeatsOfAnItemAreNotCountedAsIndependent() {
    Grades grades = Grades.of(Grades.read(Outside.FOLDER.resolve("aiag-attribute.csv"), PASS_FAIL));
    AgreementStudy.Pair pair =
        new AgreementStudy(grades, PASS_FAIL, Optional.of("reference")).pairs().get(0);
    Estimate kappa = pair.calls().kappa().interval().orElseThrow();

    assertThat(List.of(pair.one(), pair.other())).containsExactly("A", "B");
    assertThat(kappa.value()).isCloseTo(OutsideR.figure("aiag A and B", 0), within(1e-12));
    assertThat(kappa.lower()).isCloseTo(OutsideR.figure("aiag A and B", 1), within(1e-9));
    assertThat(kappa.upper()).isCloseTo(OutsideR.figure("aiag A and B", 2), within(1e-9));
  }

  @Test
  void oneCategoryOnlyHasNoKappaAndNoNumberInItsPlace() {
    assertThat(table(new int[] {20, 0}, new int[] {0, 0}).kappa()).isEmpty();
    Calls alike =
        new Calls(List.of(new Calls.Item("1", List.of(3, 0)), new Calls.Item("2", List.of(3, 0))));
    assertThat(alike.kappa().value()).isEmpty();
    assertThat(alike.kappa().words()).contains("one category");
    assertThat(alike.ac1().value()).contains(1.0);
    assertThat(Estimate.words(Optional.empty())).contains("one category");
  }

  @Test
  void noDecisionIsNeitherMissNorFalseAlarm() {
    Grades grades =
        Grades.of(
            List.of(
                grade("1", "truth", "defect"),
                grade("1", "tool", "unjudged"),
                grade("2", "truth", "defect"),
                grade("2", "tool", "acceptable"),
                grade("3", "truth", "limit"),
                grade("3", "tool", "defect")));
    Reading reading =
        new Reading(
            Set.of("defect"), Set.of("acceptable", "good"), Set.of("unjudged", "limit"), false);
    Appraisal tool = new AgreementStudy(grades, reading, Optional.of("truth")).appraisals().get(0);

    assertThat(tool.missed().plain()).isEqualTo(new Rate(1, 1));
    assertThat(tool.undecided().plain()).isEqualTo(new Rate(1, 2));
    assertThat(tool.falseAlarm().plain()).isEqualTo(new Rate(0, 0));
    assertThat(tool.effective().plain()).isEqualTo(new Rate(0, 2));
  }

  @Test
  void whoeverIsUnknownIsNamed() {
    Grades grades = Grades.of(List.of(grade("1", "a", "x"), grade("1", "b", "x")));

    assertThatThrownBy(() -> new AgreementStudy(grades, PASS_FAIL, Optional.of("c")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("\"c\"")
        .hasMessageContaining("a, b");
  }

  @Test
  void aMisspeltVerdictDoesNotCountAsGood() {
    Grades grades = Grades.of(List.of(new Grade("pin 3", "tech", 1, "Defect", Optional.empty())));
    assertThatThrownBy(
            () ->
                new Reading(Set.of("defect"), Set.of("acceptable"), Set.of("unjudged"), false)
                    .side(grades.of("tech", "pin 3").get(0)))
        .hasMessageContaining("tech said of pin 3 in trial 1: \"Defect\"")
        .hasMessageContaining("acceptable, defect, unjudged");
  }
}
