package leadlight.quality.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.quality.OutsideR;
import leadlight.quality.Stages;
import leadlight.quality.Table;
import leadlight.quality.grades.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts other than Shewhart's; figures "R" are by outside.R. */
class OtherChartsTest {

  private static final Reading WORDS =
      new Reading(Set.of("defect"), Set.of("acceptable"), Set.of("unjudged"), false);

  @TempDir private Path folder;

  private Table table(String... lines) throws IOException {
    return Table.read(Files.write(folder.resolve("t.csv"), List.of(lines)));
  }

  private static List<Subgroup> dozen() {
    int[] counts = {3, 4, 2, 5, 9, 1, 14, 2, 3, 16, 4, 2};
    return IntStream.range(0, 12).mapToObj(i -> new Subgroup("" + i, 100, counts[i])).toList();
  }

  /** Days tell no hours: three defects on each of thirty days are no sixty signals. */
  @Test
  void severalDefectsOfOneDayAreNoShortGaps() {
    List<RareEvents.Looked> joints = new ArrayList<>();
    for (int i = 0; i < 90; i++) {
      joints.add(new RareEvents.Looked("2026-09-%02d".formatted(1 + i / 3), true));
    }
    RareEvents t = RareEvents.t(joints);
    assertThat(t.gaps()).noneMatch(gap -> gap.isBeyond(t));
    assertThat(OtherChartPages.rare(t, "t", "days between defects").toString())
        .contains("60 of 89 gaps end on the day on which they began");
  }

  /** Twenty sound joints between each two defects: R's qgeom and qexp. */
  @Test
  void rareEventsHaveTheLimitsOfTheirLaw() {
    List<RareEvents.Looked> joints = new ArrayList<>();
    for (int defect = 0; defect < 12; defect++) {
      String day = "2026-%02d-%02d".formatted(1 + defect * 10 / 28, 1 + defect * 10 % 28);
      joints.addAll(Collections.nCopies(20, new RareEvents.Looked(day, false)));
      joints.add(new RareEvents.Looked(day, true));
    }
    RareEvents g = RareEvents.g(joints);

    assertThat(g.gaps()).as("what lies before the first defect is no gap").hasSize(11);
    assertThat(g.centre()).isEqualTo(OutsideR.figure("g limits", 0));
    assertThat(g.lower()).isEqualTo(OutsideR.figure("g limits", 1));
    assertThat(g.upper()).isEqualTo(OutsideR.figure("g limits", 2));
    RareEvents t = RareEvents.t(joints);
    double mean = t.gaps().stream().mapToDouble(RareEvents.Gap::length).average().orElseThrow();
    assertThat(t.upper() / mean).isCloseTo(OutsideR.figure("t limits", 2) / 10, within(1e-9));
    assertThat(t.lower() / mean).isCloseTo(OutsideR.figure("t limits", 1) / 10, within(1e-9));
    assertThat(RareEvents.g(joints.subList(0, 21)).gaps()).as("one defect").isEmpty();
  }

  @Test
  void groupsThatDifferMoreThanChanceAreTestedAndWidened() {
    ControlChart plain = ControlChart.of(ChartKind.P, dozen(), true);
    ControlChart wide =
        ControlChart.of(ChartKind.P, dozen(), new ControlChart.Design(true, Set.of(1), 0, true));

    assertThat(plain.dispersionP().orElseThrow())
        .isCloseTo(OutsideR.figure("homogeneity p"), within(1e-10));
    assertThat(wide.spread()).isCloseTo(OutsideR.figure("laney spread"), within(1e-9));
    assertThat(wide.points().get(0).upper()).isGreaterThan(plain.points().get(0).upper());
    assertThat(plain.signals()).isNotEmpty();
    assertThat(wide.signals()).isEmpty();
  }

  @Test
  void aBaselineSetsTheLimitsForWhatFollows() {
    List<Subgroup> groups = new ArrayList<>(Collections.nCopies(20, new Subgroup("b", 100, 3)));
    groups.addAll(Collections.nCopies(5, new Subgroup("n", 100, 12)));
    ControlChart chart =
        ControlChart.of(ChartKind.P, groups, new ControlChart.Design(true, Set.of(1), 20, false));

    assertThat(chart.centre()).isCloseTo(0.03, within(1e-12));
    assertThat(chart.signals()).hasSize(5);
    assertThatThrownBy(
            () ->
                ControlChart.of(
                    ChartKind.P, groups, new ControlChart.Design(true, Set.of(1), 26, false)))
        .isInstanceOf(UserError.class);
  }

  /** Montgomery, 9.1 and 9.2: sums of what exceeds k, average with exact limits; by hand. */
  @Test
  void smallShiftsAddUp() {
    ChartRules rules = ChartRules.builtIn();
    List<Standardised.Point> sums = Standardised.cusum(List.of(1.0, 2.0, -1.0), rules.cusum());
    assertThat(sums.get(1).high()).isCloseTo(2.0, within(1e-12));
    assertThat(sums.get(2).high()).isCloseTo(0.5, within(1e-12));
    assertThat(sums.get(2).low()).isCloseTo(0.5, within(1e-12));
    List<Standardised.Point> average = Standardised.ewma(List.of(1.0, 2.0), rules.ewma());
    assertThat(average.get(1).high()).isCloseTo(0.56, within(1e-12));
    assertThat(average.get(1).limit())
        .isCloseTo(2.962 * Math.sqrt(0.2 / 1.8 * (1 - Math.pow(0.8, 4))), within(1e-12));
    List<Double> shifted = Collections.nCopies(12, 1.0);
    assertThat(Standardised.cusum(shifted, rules.cusum())).last().matches(p -> p.isSignal());
  }

  /** R, by integral equations; with constant limits it gives the published 500 and 10.5. */
  @Test
  void smallShiftChartsFalselyAlarmAsOftenAsIsSaid() {
    ChartRules rules = ChartRules.builtIn();
    assertThat((double) rules.cusum().runLength())
        .isCloseTo(groupsToSignal("cusum .5, 5", 0), within(1.0));
    assertThat((double) rules.ewma().runLength())
        .isCloseTo(groupsToSignal("ewma .2, 2.962 exact limits,", 0), within(1.0));
    assertThat(groupsToSignal("ewma .2, 2.962 constant limits,", 0)).isCloseTo(500, within(1.0));
    assertThat(groupsToSignal("ewma .2, 2.962 constant limits,", 1)).isCloseTo(10.5, within(.1));
  }

  /** 3,000 series of a shift by one standard deviation: 10.4 and 9.6 groups, error 0.1. */
  @Test
  void smallShiftChartsSignalAsSoonAsIntegralEquationsSay() {
    ChartRules rules = ChartRules.builtIn();
    Random random = new Random(5);
    double cusum = 0;
    double ewma = 0;
    int runs = 3000;
    for (int run = 0; run < runs; run++) {
      List<Double> z = random.doubles(150).mapToObj(x -> 1 + random.nextGaussian()).toList();
      cusum += first(Standardised.cusum(z, rules.cusum())) / runs;
      ewma += first(Standardised.ewma(z, rules.ewma())) / runs;
    }
    assertThat(cusum).isCloseTo(groupsToSignal("cusum .5, 5", 1), within(0.35));
    assertThat(ewma).isCloseTo(groupsToSignal("ewma .2, 2.962 exact limits,", 1), within(0.35));
  }

  private static double groupsToSignal(String design, int shift) {
    return OutsideR.figure(design + " groups to a signal, no shift, 1 sigma", shift);
  }

  private static double first(List<Standardised.Point> points) {
    return 1 + points.stream().takeWhile(point -> !point.isSignal()).count();
  }

  /** Average run lengths by simulation beside Champ and Woodall's, which are from memory. */
  @Test
  void falseAlarmsComeAsOftenAsIsSaid() {
    Map<String, Double> said = ChartRules.builtIn().groupsToFalseAlarm();
    for (String rules : List.of("1", "1,2,3,4")) {
      Set<Integer> chosen =
          java.util.Arrays.stream(rules.split(","))
              .map(Integer::valueOf)
              .collect(Collectors.toSet());
      assertThat(runLength(chosen))
          .as(rules)
          .isCloseTo(said.get(rules), within(0.08 * said.get(rules)));
    }
  }

  private static double runLength(Set<Integer> rules) {
    Random random = new Random(7);
    int runs = 1500;
    long groups = 0;
    for (int run = 0; run < runs; run++) {
      List<Double> last = new ArrayList<>();
      boolean signal = false;
      while (!signal) {
        last.add(random.nextGaussian());
        groups++;
        if (last.size() > 8) {
          last.remove(0);
        }
        int end = last.size() - 1;
        signal = RunRules.of(last, rules).stream().anyMatch(s -> s.index() == end);
      }
    }
    return (double) groups / runs;
  }

  @Test
  void daysAreSortedAsDates() throws IOException {
    Table table =
        table("day,verdict", "2026-11-10,defect", "9.11.2026,acceptable", "2026-9-30,acceptable");
    assertThat(ChartData.read(table, ChartKind.P, "day", WORDS).groups())
        .extracting(Subgroup::name)
        .containsExactly("2026-9-30", "9.11.2026", "2026-11-10");
    assertThatThrownBy(
            () ->
                ChartData.read(table("day,verdict", "3/4/2026,defect"), ChartKind.P, "day", WORDS))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("line 2, column 1 (day)")
        .hasMessageContaining("is no date");
  }

  @Test
  void stagesAreNotMixedAndWhatIsLeftOutIsCounted() throws IOException {
    Table table =
        table(
            "day,board,stage,verdict",
            "2026-11-01,a,as-received,defect",
            "2026-11-02,a,final,acceptable",
            "2026-11-02,a,final,unjudged",
            "2026-11-01,b,as-received,defect");
    ChartData last = ChartData.read(table, ChartKind.DPMO, "day", WORDS);

    assertThat(last.groups())
        .containsExactly(new Subgroup("2026-11-01", 1, 1), new Subgroup("2026-11-02", 1, 0));
    assertThat(last.left()).hasSize(2);
    assertThat(last.left().get(0)).startsWith("1 joint of earlier stages is left out");
    assertThat(ChartData.read(table, ChartKind.P, "stage", WORDS).groups())
        .as("in the order of the work")
        .extracting(Subgroup::name)
        .containsExactly("as-received", "final");
    Table received = table.where(row -> Stages.same(row.text("stage"), "as received"));
    assertThat(ChartData.read(received, ChartKind.P, "day", WORDS).groups())
        .containsExactly(new Subgroup("2026-11-01", 2, 2));
    assertThatThrownBy(
            () ->
                ChartData.read(
                    table(
                        "day,stage,verdict",
                        "2026-11-01,as-received,defect",
                        "2026-11-02,final,acceptable"),
                    ChartKind.P,
                    "day",
                    WORDS))
        .hasMessageContaining("column \"board\"");
  }

  @Test
  void everyFindingHasAllJointsAsItsOpportunities() throws IOException {
    Table table =
        table("verdict,finding", "defect,open; bridge", "defect,open", "acceptable,", "unjudged,");
    assertThat(ChartData.read(table, ChartKind.P, "finding", WORDS).groups())
        .containsExactly(new Subgroup("open", 3, 2), new Subgroup("bridge", 3, 1));
  }
}
