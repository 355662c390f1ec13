package leadlight.quality.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.quality.Outside;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Table;
import leadlight.quality.agreement.Pages;
import leadlight.quality.grades.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of control charts: NIST/SEMATECH e-Handbook 6.3.3.2, and tables of joints. */
class ChartPagesTest {

  private static final Reading WORDS =
      new Reading(Set.of("defect"), Set.of("acceptable"), Set.of("unjudged"), false);

  @TempDir private Path folder;

  private static final ControlChart WAFERS =
      ControlChart.of(
          ChartKind.P,
          ChartData.read(
                  Table.read(Outside.FOLDER.resolve("nist-p-chart.csv"), "group"),
                  ChartKind.P,
                  "group",
                  WORDS)
              .groups(),
          true);

  private Table table(String... lines) throws IOException {
    Path file = folder.resolve("joints.csv");
    Files.write(file, List.of(lines));
    return Table.read(file);
  }

  /** NIST: mean .2313, limits .4102 and .0524; wafer 15 has 22 of 50, wafer 23 has 24. */
  @Test
  void nistsWafers() {
    Page page = ChartPages.page(WAFERS, Pareto.of(List.of()), "wafer", true);

    assertThat(Pages.strong(page))
        .contains("30 groups")
        .contains("mean 0.2313")
        .contains("347 in 1500");
    assertThat(Pages.line(page, "wafer", "15"))
        .containsExactly("15", "50", "22", "0.4400", "0.05243 to 0.4102");
    assertThat(Pages.grid(page, "wafer")).hasSize(30);
    assertThat(Pages.line(page, "group", "15")).contains("above");
    assertThat(Pages.headings(page)).doesNotContain("Findings");
  }

  @Test
  void thePlotHasLimitsCentrePointsAndSignals() {
    Plot plot = Pages.plots(ChartPages.page(WAFERS, Pareto.of(List.of()), "wafer", true)).get(0);

    assertThat(plot.ticks()).hasSize(30).startsWith("1", "2");
    Plot.Series upper = plot.series().get(0);
    assertThat(upper.points()).hasSize(60);
    assertThat(upper.points().get(0)[0]).isEqualTo(-0.5);
    assertThat(upper.points().get(1)[0]).isEqualTo(0.5);
    assertThat(upper.points().get(0)[1]).isGreaterThan(0.41);
    assertThat(plot.series().get(1).points().get(0)[1]).isLessThan(0.06);
    assertThat(plot.series().get(2).points().get(1)[0]).as("centre line").isEqualTo(29.5);
    assertThat(plot.series())
        .filteredOn(s -> s.style() == Plot.Style.ALARM)
        .singleElement()
        .satisfies(
            s ->
                assertThat(s.points())
                    .anySatisfy(p -> assertThat(p).containsExactly(14, 0.44))
                    .anySatisfy(p -> assertThat(p).containsExactly(22, 0.48)));
  }

  /** Connectors have no order in time: no line joins them and only the first rule is asked. */
  @Test
  void groupsWithoutAnOrderAreNotJoined() {
    ControlChart unordered =
        ControlChart.of(
            ChartKind.P, WAFERS.points().stream().map(ControlChart.Point::group).toList(), false);
    Page page = ChartPages.page(unordered, Pareto.of(List.of()), "connector", false);

    assertThat(Pages.plots(page).get(0).series())
        .extracting(Plot.Series::style)
        .doesNotContain(Plot.Style.LINE);
    assertThat(
            Pages.plots(ChartPages.page(WAFERS, Pareto.of(List.of()), "w", true)).get(0).series())
        .extracting(Plot.Series::style)
        .contains(Plot.Style.LINE);
    assertThat(Pages.words(page)).contains("without an order");
    assertThat(Pages.grid(page, "group")).hasSize(2);
  }

  @Test
  void withoutADefectTheLimitsTellNothingYet() {
    ControlChart none =
        ControlChart.of(
            ChartKind.P, List.of(new Subgroup("a", 50, 0), new Subgroup("b", 50, 0)), true);
    Page page = ChartPages.page(none, Pareto.of(List.of()), "day", true);
    assertThat(Pages.words(page)).contains("not one defect").contains("None.");
    assertThat(Pages.strong(page)).contains("no signal");
  }

  @Test
  void findingsAreListedMostFrequentFirstWithTheirRunningShare() {
    Pareto pareto = Pareto.of(List.of("open", "bridge", "open", "open"));
    Page page = ChartPages.page(WAFERS, pareto, "wafer", true);
    assertThat(Pages.grid(page, "finding"))
        .containsExactly(List.of("open", "3", "75.0 %"), List.of("bridge", "1", "100.0 %"));
    Plot bars = Pages.plots(page).get(1);
    assertThat(bars.ticks()).containsExactly("open", "bridge");
    assertThat(bars.series().get(0).points().get(0)).containsExactly(0, 3);
    assertThat(bars.series().get(0).style()).isEqualTo(Plot.Style.BARS);
  }

  @Test
  void jointsAreGroupedAndTheirFindingsGathered() throws IOException {
    Table table =
        table(
            "week,board,verdict,finding",
            "10,b1,defect,open; bridge",
            "10,b1,acceptable,",
            "9,b2,defect,",
            "9,b3,acceptable,");

    ChartData joints = ChartData.read(table, ChartKind.DPMO, "week", WORDS);
    assertThat(joints.groups())
        .as("numbers by size, not as text")
        .containsExactly(new Subgroup("9", 2, 1), new Subgroup("10", 2, 1));
    assertThat(joints.findings()).containsExactly("open", "bridge", "not named");
    ChartData boards = ChartData.read(table, ChartKind.U, "week", WORDS);
    assertThat(boards.groups())
        .as("a u chart counts boards")
        .containsExactly(new Subgroup("9", 2, 1), new Subgroup("10", 1, 1));
  }

  @Test
  void namesAreInAlphabeticalOrder() {
    assertThat(
            ChartData.of(
                    List.of(
                        new ChartData.Graded("b", true, List.of(), 1),
                        new ChartData.Graded("a", false, List.of(), 1)),
                    Map.of(),
                    "week")
                .groups())
        .extracting(Subgroup::name)
        .containsExactly("a", "b");
  }

  /** IPC-7912: 3 defects in 1,900 terminations are 1,579 per million. */
  @Test
  void defectsPerMillionOpportunities() {
    ControlChart chart =
        ControlChart.of(ChartKind.DPMO, List.of(new Subgroup("week", 1900, 3)), true);
    Page page = ChartPages.page(chart, Pareto.of(List.of()), "week", true);
    assertThat(Pages.line(page, "week", "week").get(3)).isEqualTo("1579");
    assertThat(page.title()).contains("DPMO");
  }

  @Test
  void aGroupOfNothingIsRefused() throws IOException {
    Table table = table("group,units,count", "a,50,1", "b,0,0");
    assertThatThrownBy(() -> ChartData.read(table, ChartKind.P, "group", WORDS))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("line 3");
  }

  @Test
  void aMisspeltVerdictIsNoGoodOne() throws IOException {
    Table table = table("day,verdict", "2026-11-02,defect", "2026-11-02,Defect");
    assertThatThrownBy(() -> ChartData.read(table, ChartKind.P, "day", WORDS))
        .hasMessageContaining("line 3")
        .hasMessageContaining("\"Defect\" is no verdict that is known");
  }

  @Test
  void aJointThatIsNotJudgedWasNoOpportunity() throws IOException {
    Table table =
        table("day,verdict", "2026-11-02,defect", "2026-11-02,unjudged", "2026-11-02,acceptable");
    assertThat(ChartData.read(table, ChartKind.P, "day", WORDS).groups())
        .containsExactly(new Subgroup("2026-11-02", 2, 1));
  }
}
