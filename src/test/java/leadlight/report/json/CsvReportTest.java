package leadlight.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import leadlight.model.Measure;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReportTest {

  @Test
  void each_joint_has_one_line() {
    List<NamedCsvRecord> lines = lines(Scenes.scored("dev-012"));
    assertThat(lines).hasSize(19);
    assertThat(lines.get(1).getField("verdict")).isEqualTo("defect");
    assertThat(lines.get(1).getField("findings")).isEqualTo("bridge 2-3");
    assertThat(lines.get(6).getField("unjudged_because")).contains("glare");
  }

  @Test
  void units_stand_in_the_headers_and_numbers_stay_numbers() {
    NamedCsvRecord first = lines(Scenes.scored("dev-012")).get(0);
    for (Measure measure : Measure.values()) {
      assertThat(first.getHeader()).contains(measure.id(), "u_" + measure.id());
    }
    assertThat(Double.parseDouble(first.getField("side_overhang_mm"))).isEqualTo(-0.0123);
    assertThat(first.getField("lead_width_mm")).as("not measured").isEmpty();
  }

  @Test
  void a_photo_without_a_row_says_why_on_a_line_without_a_pin() {
    List<NamedCsvRecord> lines = lines(Scenes.withoutRow("dev-012"));
    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).getField("pin")).isEmpty();
    assertThat(lines.get(0).getField("unjudged_because")).contains("no row of 19 leads");
    assertThat(lines.get(0).getField("doubts")).isEqualTo("no-row");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "\nx"})
  void no_text_runs_as_a_formula(String text) {
    ScoredPhoto scored = Scenes.scored("dev-012");
    PhotoInfo p = scored.photo();
    PhotoInfo named = new PhotoInfo(text, p.sha256(), 10, 10, p.format(), 8, 1, Optional.empty());
    GradedJoint joint =
        new GradedJoint(
            scored.joints().get(0).joint(),
            Verdict.UNJUDGED,
            List.of(),
            List.of(),
            List.of(new Doubt.Earlier(text)),
            List.of());
    NamedCsvRecord line =
        lines(Scenes.photo(named, scored.settings(), scored.row(), List.of(joint))).get(0);
    assertThat(line.getField("photo")).isEqualTo("'" + text);
    assertThat(line.getField("unjudged_because")).isEqualTo("'" + text);
  }

  private static List<NamedCsvRecord> lines(ScoredPhoto scored) {
    String csv = new String(CsvReport.bytes(scored), StandardCharsets.UTF_8);
    return CsvReader.builder().ofNamedCsvRecord(csv).stream().toList();
  }
}
