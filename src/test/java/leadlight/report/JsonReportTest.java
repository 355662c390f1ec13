package leadlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.model.FindingKind;
import leadlight.model.RowHint;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.model.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema is checked by an implementation from outside, networknt's json-schema-validator. */
class JsonReportTest {

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(DataFile.builtIn("schema/report.schema.json").text());

  @ParameterizedTest
  @ValueSource(strings = {"dev-012", "dev-902", "dev-023"})
  void reports_fit_the_schema(String id) {
    assertThat(errors(json(Scenes.scored(id)))).isEmpty();
  }

  @Test
  void a_report_without_a_row_fits_the_schema() {
    assertThat(errors(json(Scenes.withoutRow("dev-012")))).isEmpty();
  }

  @Test
  void a_place_that_a_person_pointed_at_is_kept() throws IOException {
    ScoredPhoto scored = Scenes.scored("dev-012");
    Settings s = scored.settings();
    Settings pointed =
        new Settings(s.row(), 3, s.acceptanceSet(), Optional.of(new RowHint(10, 20.5, 0, 0)));
    String json = json(Scenes.photo(scored.photo(), pointed, scored.row(), scored.joints()));
    assertThat(errors(json)).isEmpty();
    assertThat(new ObjectMapper().readTree(json).at("/settings/pointed_at/y_px").asDouble())
        .isEqualTo(20.5);
  }

  @Test
  void the_schema_refuses_an_unjudged_joint_without_reason_and_an_unknown_verdict() {
    String json = json(Scenes.scored("dev-012"));
    assertThat(errors(json.replaceAll(",\\s*\"unjudged_because\" : \"[^\"]*\"", ""))).isNotEmpty();
    assertThat(errors(json.replace("\"process-indicator\"", "\"warning\""))).isNotEmpty();
  }

  @Test
  void the_schema_knows_every_verdict_and_finding() throws IOException {
    JsonNode defs =
        new ObjectMapper()
            .readTree(DataFile.builtIn("schema/report.schema.json").text())
            .get("$defs");
    for (Verdict verdict : Verdict.values()) {
      assertThat(defs.at("/verdict/enum").toString()).contains('"' + verdict.id() + '"');
    }
    for (FindingKind kind : FindingKind.values()) {
      assertThat(defs.at("/kind/enum").toString()).contains('"' + kind.id() + '"');
    }
  }

  @Test
  void numbers_carry_value_uncertainty_and_unit_without_noise_digits() throws IOException {
    JsonNode measure =
        new ObjectMapper()
            .readTree(json(Scenes.scored("dev-012")))
            .at("/joints/0/measures/side_overhang_mm");
    assertThat(measure.toString()).isEqualTo("{\"value\":-0.0123,\"u\":0.004,\"unit\":\"mm\"}");
  }

  @Test
  void the_same_photo_gives_the_same_bytes() {
    assertThat(json(Scenes.scored("dev-902"))).isEqualTo(json(Scenes.scored("dev-902")));
  }

  private static String json(ScoredPhoto scored) {
    return new String(JsonReport.bytes(scored, Scenes.CONTEXT), StandardCharsets.UTF_8);
  }

  private static List<Error> errors(String json) {
    return SCHEMA.validate(json, InputFormat.JSON);
  }
}
