package leadlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.report.json.Scenes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TerminalSummaryTest {

  @ParameterizedTest
  @ValueSource(strings = {"dev-012", "dev-902", "dev-023"})
  void lines_fit_eighty_columns_and_are_plain(String id) {
    assertThat(
            TerminalSummary.lines(Scenes.scored(id), Optional.empty(), TerminalSummary.Detail.MOST))
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80).matches("[ -~]*"));
  }

  @Test
  void defects_come_first_one_line_each_then_what_is_unjudged() {
    List<String> table =
        TerminalSummary.lines(
                Scenes.scored("dev-012"), Optional.empty(), TerminalSummary.Detail.MOST)
            .stream()
            .filter(line -> line.matches(" +[\\d, -]+ +(defect|not judged) .*"))
            .toList();
    assertThat(table).hasSize(7);
    assertThat(table.subList(0, 6)).allMatch(line -> line.contains("defect"));
    assertThat(table.get(0)).contains("2  defect", "bridge 2-3, 97 % sure");
    assertThat(table.get(6)).as("two alike in one").contains("7, 15  not judged", "glare");
  }

  @Test
  void open_and_starved_are_one_lack_of_solder_with_one_probability() {
    assertThat(
            TerminalSummary.lines(
                Scenes.scored("dev-902"), Optional.empty(), TerminalSummary.Detail.MOST))
        .anyMatch(line -> line.contains("no fillet, 97 % sure; rather open"));
  }

  @Test
  void counts_fitness_and_paths_are_told() {
    WrittenReport files =
        new WrittenReport(
            Path.of("r/a.json"),
            Path.of("r/a.csv"),
            Path.of("r/a.annotated.png"),
            Path.of("r/a.html"));
    String text =
        String.join(
            "\n",
            TerminalSummary.lines(
                Scenes.scored("dev-012"), Optional.of(files), TerminalSummary.Detail.MOST));
    assertThat(text)
        .startsWith(
            "dev-012.jpg: DEFECT\n"
                + "  6 defects, 2 not judged, 1 process indicator, 10 acceptable\n")
        .contains("at the bench:\n  - bridge: meter the two pins; wick the solder off\n")
        .contains("row: the joints of this row look alike throughout")
        .contains("seen: lead, fillet at the toe, room for it")
        .contains("photo: The right third is soft")
        .contains("process indicators: 4 excess")
        .contains("not visible from above:")
        .contains("wrote " + Path.of("r/a.annotated.png"), "wrote " + Path.of("r/a.html"));
  }

  @Test
  void an_unfound_row_is_said_with_its_reason() {
    assertThat(
            TerminalSummary.lines(
                Scenes.withoutRow("dev-012"), Optional.empty(), TerminalSummary.Detail.MOST))
        .contains("dev-012.jpg: ROW NOT FOUND")
        .anyMatch(line -> line.contains("no row of 19 leads shows"));
  }
}
