package leadlight.report.json;

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
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.Verdict;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
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
  void a_doubt_is_told_by_code_arguments_and_sentence() throws IOException {
    JsonNode joint = new ObjectMapper().readTree(json(Scenes.scored("dev-012"))).at("/joints/6");
    assertThat(joint.get("unjudged_because").asText())
        .isEqualTo("glare burns out 42 % of the joint; dim or turn the lamp");
    assertThat(joint.at("/doubts/0/code").asText()).isEqualTo("glare");
    assertThat(joint.at("/doubts/0/args/burnt_share").asDouble()).isEqualTo(0.42);
    assertThat(joint.at("/doubts/0/sentence").asText())
        .isEqualTo(joint.get("unjudged_because").asText());
  }

  @Test
  void grounds_checks_and_notes_of_the_row_stand_in_the_report() throws IOException {
    JsonNode report = new ObjectMapper().readTree(json(Scenes.scored("dev-012")));
    assertThat(report.at("/joints/0/grounds/0/code").asText()).isEqualTo("lead-seen");
    assertThat(report.at("/row/notes/0/code").asText()).isEqualTo("alike-throughout");
    JsonNode check = report.at("/joints/1/checks/0");
    assertThat(check.get("bound").asText()).isEqualTo("upper");
    assertThat(check.get("kept_probability").asDouble()).isEqualTo(0.001);
  }

  @Test
  void a_missing_row_is_told_by_code_and_sentence() throws IOException {
    JsonNode row = new ObjectMapper().readTree(json(Scenes.withoutRow("dev-012"))).get("row");
    assertThat(row.get("reason").asText()).startsWith("no row of 19 leads shows; ");
    assertThat(row.at("/note/code").asText()).isEqualTo("no-row");
    assertThat(row.at("/note/args/leads").asInt()).isEqualTo(19);
  }

  @Test
  void a_place_that_a_person_pointed_at_is_kept() throws IOException {
    ScoredPhoto scored = Scenes.scored("dev-012");
    Settings s = scored.settings();
    Settings pointed =
        new Settings(
            s.row(),
            3,
            s.acceptanceSet(),
            RowHint.of(Optional.of(new RowHint.Box(10, 20.5, 0, 0)), Optional.of(BodySide.LEFT)));
    String json = json(Scenes.photo(scored.photo(), pointed, scored.row(), scored.joints()));
    assertThat(errors(json)).isEmpty();
    assertThat(new ObjectMapper().readTree(json).at("/settings/pointed_at/y_px").asDouble())
        .isEqualTo(20.5);
    assertThat(new ObjectMapper().readTree(json).at("/settings/body_told").asText())
        .isEqualTo("left");
  }

  @Test
  void both_opinions_and_what_moved_the_reader_are_told() throws IOException {
    ScoredPhoto scored = Scenes.scored("dev-012");
    String json = json(Scenes.read(scored));
    assertThat(errors(json)).isEmpty();
    JsonNode report = new ObjectMapper().readTree(json);
    assertThat(report.at("/settings/reader").asText()).isEqualTo(Scenes.CONTEXT.reader());
    JsonNode opinions = report.at("/joints/0/opinions");
    assertThat(opinions.at("/measures/unwetted").asDouble()).isEqualTo(0.02);
    assertThat(opinions.at("/reader/unwetted").asDouble()).isEqualTo(0.64);
    assertThat(opinions.at("/reader_moved_by/y0_pitch").asDouble()).isEqualTo(-0.75);
    assertThat(opinions.at("/strangeness").asDouble()).isEqualTo(0.125);
  }

  @Test
  void measures_alone_name_no_reader_and_no_opinions() throws IOException {
    ScoredPhoto scored = Scenes.scored("dev-012");
    Settings s = scored.settings();
    Settings alone =
        new Settings(s.row(), 2, s.acceptanceSet(), Optional.empty(), Opinions.MEASURES);
    String json = json(Scenes.photo(scored.photo(), alone, scored.row(), scored.joints()));
    assertThat(errors(json)).isEmpty();
    JsonNode report = new ObjectMapper().readTree(json);
    assertThat(report.at("/settings/opinions").asText()).isEqualTo("measures");
    assertThat(report.at("/settings").has("reader")).isFalse();
    assertThat(report.at("/joints/0").has("opinions")).isFalse();
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
