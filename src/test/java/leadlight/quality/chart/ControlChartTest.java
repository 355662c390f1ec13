package leadlight.quality.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.quality.Outside;
import leadlight.quality.Table;
import leadlight.quality.grades.Reading;
import org.junit.jupiter.api.Test;

class ControlChartTest {

  private static final Reading WORDS =
      new Reading(Set.of("defect"), Set.of("acceptable"), Set.of("unjudged"), false);

  /** NIST/SEMATECH e-Handbook 6.3.3.2: 30 wafers, 50 chips each. */
  @Test
  void pChartOfWafers() {
    Table table = Table.read(Outside.FOLDER.resolve("nist-p-chart.csv"), "group");
    ControlChart chart =
        ControlChart.of(
            ChartKind.P, ChartData.read(table, ChartKind.P, "group", WORDS).groups(), true);

    assertThat(chart.points()).hasSize(30);
    assertThat(chart.centre()).isCloseTo(.2313, within(5e-5));
    assertThat(chart.points().get(0).upper()).isCloseTo(.4102, within(5e-5));
    assertThat(chart.points().get(0).lower()).isCloseTo(.0524, within(5e-5));
    assertThat(chart.signals())
        .as("wafers 15 (.44) and 23 (.48) lie beyond the limit")
        .filteredOn(s -> s.rule().startsWith("a point"))
        .extracting(RunRules.Signal::index)
        .containsExactly(14, 22);
  }

  /** NIST/SEMATECH e-Handbook 6.3.3.1: 25 wafers, mean 16 (from memory): 16 +- 3 x 4. */
  @Test
  void cChartOfWafers() {
    List<Subgroup> wafers =
        IntStream.range(0, 25).mapToObj(i -> new Subgroup("w" + i, 1, 16)).toList();
    ControlChart chart = ControlChart.of(ChartKind.C, wafers, true);

    assertThat(chart.centre()).isEqualTo(16);
    assertThat(chart.points().get(0).upper()).isEqualTo(28);
    assertThat(chart.points().get(0).lower()).isEqualTo(4);
  }

  /** IPC-7912: one opportunity a termination; a type A receptacle has 19 leads and 4 legs. */
  @Test
  void defectsPerMillionOpportunities() {
    int opportunities = 100 * (19 + 4);
    ControlChart chart =
        ControlChart.of(ChartKind.DPMO, List.of(new Subgroup("week 48", opportunities, 7)), true);

    assertThat(chart.centre()).isCloseTo(7 / 2300.0 * 1e6, within(1e-6));
    assertThat(chart.centre()).isCloseTo(3043.5, within(.05));
  }

  @Test
  void zeroDefectsGiveLimitsOfZeroAndNoSignal() {
    ControlChart chart =
        ControlChart.of(
            ChartKind.U, List.of(new Subgroup("a", 10, 0), new Subgroup("b", 20, 0)), true);

    assertThat(chart.centre()).isZero();
    assertThat(chart.points().get(0).upper()).isZero();
    assertThat(chart.signals()).isEmpty();
  }

  @Test
  void aBaselineWithoutSpreadIsRefused() {
    ControlChart.Design two = new ControlChart.Design(true, Set.of(1), 2, false);
    for (ChartKind kind : List.of(ChartKind.P, ChartKind.U, ChartKind.C)) {
      assertThatThrownBy(() -> ControlChart.of(kind, groups(0, 0, 10), two))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("the first 2 groups have no spread");
      assertThat(ControlChart.of(kind, groups(0, 0), two).signals()).isEmpty();
    }
    assertThatThrownBy(() -> ControlChart.of(ChartKind.P, groups(10, 10, 0), two))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("not one sound unit");
    assertThat(ControlChart.of(ChartKind.U, groups(10, 10, 60), two).signals())
        .as("ten defects in ten units are no lack of spread")
        .hasSize(1);
  }

  private static List<Subgroup> groups(int... counts) {
    return IntStream.range(0, counts.length)
        .mapToObj(i -> new Subgroup("g" + i, 10, counts[i]))
        .toList();
  }

  /** Western Electric, Statistical Quality Control Handbook (1956), tests for instability. */
  @Test
  void runRules() {
    assertThat(rules(0.0, 3.1)).containsExactly("a point beyond three sigma");
    assertThat(rules(2.1, 0.0, 2.1)).containsExactly("two of three beyond two sigma");
    assertThat(rules(2.1, 0.0, 0.0, 2.1)).isEmpty();
    assertThat(rules(2.1, 0.0, -2.1)).isEmpty();
    assertThat(rules(1.1, 1.1, 0.0, 1.1, 1.1)).containsExactly("four of five beyond one sigma");
    assertThat(RunRules.of(Collections.nCopies(8, -0.1), true))
        .containsExactly(new RunRules.Signal("eight in a row on one side", 7, false));
    assertThat(RunRules.of(Collections.nCopies(7, 0.1), true)).isEmpty();
    assertThat(RunRules.of(Collections.nCopies(8, 0.1), false)).as("no order").isEmpty();
  }

  private static List<String> rules(Double... z) {
    return RunRules.of(List.of(z), true).stream().map(RunRules.Signal::rule).toList();
  }

  @Test
  void moreNonconformingThanUnitsIsRefused() {
    assertThatThrownBy(() -> ControlChart.of(ChartKind.P, List.of(new Subgroup("a", 3, 4)), true))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("u chart");
  }

  @Test
  void paretoHasTheMostFrequentFirst() {
    Pareto pareto = Pareto.of(List.of("open", "bridge", "open", "excess"));

    assertThat(pareto.bars())
        .containsExactly(
            new Pareto.Bar("open", 2, .5),
            new Pareto.Bar("bridge", 1, .75),
            new Pareto.Bar("excess", 1, 1));
    assertThat(Pareto.of(List.of()).bars()).isEmpty();
  }
}
