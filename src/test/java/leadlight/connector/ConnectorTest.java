package leadlight.connector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConnectorTest {

  private static final ConnectorLibrary LIBRARY = ConnectorLibrary.builtIn();

  @TempDir Path folder;

  /** Debian package kicad-footprints 6.0.11-1: leads, pitch, land width and length, span. */
  @ParameterizedTest
  @CsvSource({
    "video-a-19-slots, 0, 19, 0.50, 0.30, 2.60, 9.000",
    "video-a-19-holes, 0, 19, 0.50, 0.30, 1.90, 9.000",
    "video-d-19,       0, 10, 0.40, 0.23, 0.85, 3.600",
    "video-d-19,       1,  9, 0.40, 0.23, 1.00, 3.200",
    "usb-c-16,         0, 12, 0.50, 0.60, 1.15, 6.400",
    "usb-c-24,         0, 12, 0.50, 0.30, 0.70, 5.500",
    "usb-c-24,         1, 12, 0.50, 0.30, 0.70, 5.500",
    "flex-0.5,         0, 24, 0.50, 0.30, 1.30, 11.500",
    "mezzanine-0.4,    1, 20, 0.40, 0.22, 0.66, 7.600",
    "mezzanine-0.5,    0, 20, 0.50, 0.30, 1.10, 9.500",
    "quad-flat-0.5,    0, 16, 0.50, 0.30, 1.55, 7.500"
  })
  void geometryIsThatOfTheTable(
      String id, int row, int leads, double pitch, double width, double length, double span) {
    RowSpec spec = LIBRARY.find(id).rowSpec(row, OptionalInt.empty());

    assertThat(spec.connectorId()).isEqualTo(id);
    assertThat(spec.leads()).isEqualTo(leads);
    assertThat(spec.pitchMm()).isEqualTo(pitch);
    assertThat(spec.lands().get(0).widthMm()).hasValue(width);
    assertThat(spec.lands().get(0).lengthMm()).hasValue(length);
    assertThat(spec.spanMm()).isCloseTo(span, within(1e-9));
  }

  /** Same source: rows 1.225 and 1.70 mm apart, slots 14.5 mm apart, holes at 7.25 and 7.85 mm. */
  @Test
  void rowsAndLegsStandWhereTheTableSays() {
    assertThat(LIBRARY.find("video-d-19").rows().get(1).yMm()).isEqualTo(-1.225);
    assertThat(LIBRARY.find("usb-c-24").rows().get(1).yMm()).isEqualTo(-1.70);
    assertThat(legsX("video-a-19-slots")).containsExactly(-7.25, 7.25, -7.25, 7.25);
    List<Double> holes = legsX("video-a-19-holes");
    assertThat((holes.get(1) - holes.get(0)) / 2).isCloseTo(7.25, within(1e-9));
    assertThat((holes.get(3) - holes.get(2)) / 2).isCloseTo(7.85, within(1e-9));
  }

  private static List<Double> legsX(String id) {
    return LIBRARY.find(id).legs().orElseThrow().each().stream().map(Leg::xMm).toList();
  }

  /** USB Type-C 16 contacts, common kind: order and the gaps 0.80 and 0.65 mm beside the power. */
  @Test
  void theTypeCRowIsUnevenAndNamed() {
    RowSpec spec = LIBRARY.find("usb-c-16").rowSpec(0, OptionalInt.empty());

    assertThat(spec.lands())
        .extracting(LandSpec::name)
        .containsExactly(
            "A1/B12", "A4/B9", "B8", "A5", "B7", "A6", "A7", "B6", "A8", "B5", "A9/B4", "A12/B1");
    assertThat(spec.lands().get(1).uMm()).isEqualTo(0.80);
    assertThat(spec.lands().get(2).uMm() - spec.lands().get(1).uMm()).isCloseTo(0.65, within(1e-9));
    assertThat(spec.pin1Reversed()).isTrue();
  }

  @Test
  void anOpenNumberOfLeadsIsTheUsersWithinTheRange() {
    Connector flex = LIBRARY.find("flex-0.5");

    assertThat(flex.rowSpec(0, OptionalInt.of(40)).spanMm()).isCloseTo(19.5, within(1e-9));
    assertThatThrownBy(() -> flex.rowSpec(0, OptionalInt.of(200)))
        .isInstanceOf(UserError.class)
        .hasMessage("connector flex-0.5, row rear: has 4 to 80 leads, not 200");
    assertThatThrownBy(() -> LIBRARY.find("video-a-19-slots").rowSpec(0, OptionalInt.of(20)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("has 19 leads, not 20");
    assertThatThrownBy(() -> LIBRARY.find("usb-c-16").rowSpec(0, OptionalInt.of(16)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("has 12 leads, not 16");
  }

  /** HDMI type A pin assignment: 17 ground, 18 +5 V, 19 hot-plug detect. */
  @Test
  void signalsAndHarmAreFoundByPin() {
    Connector video = LIBRARY.find("video-a-19-slots");

    assertThat(video.signalOf("19").orElseThrow().pins()).containsEntry("19", "hot-plug detect");
    assertThat(video.bridgeHarm("18", "17").orElseThrow().harm()).contains("+5 V to ground");
    assertThat(video.bridgeHarm("1", "2")).isEmpty();
    assertThat(video.bridgeHarm("17", "17")).isEmpty();
    assertThat(video.rows().get(0).lands().at(OptionalInt.empty()))
        .allSatisfy(land -> assertThat(video.signalOf(land.name())).isPresent());
  }

  @Test
  void anUnknownIdIsAnsweredWithTheNearest() {
    assertThatThrownBy(() -> LIBRARY.find("usb-c"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("nearest are usb-c-16, usb-c-24");
    assertThatThrownBy(() -> LIBRARY.find("no.json"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("does not exist");
  }

  @Test
  void aFileThatDoesNotFitIsRefusedInOneLine() throws IOException {
    assertRefused("\"leads\": 19", "\"leads\": 2", "leads must lie in [3.0, 1000.0]");
    assertRefused("\"width_mm\": 0.3", "\"width_mm\": 0.6", "lands touch");
    assertRefused("\"pitch_mm\": 0.5", "\"pitch\": 0.5", "rows[0].lands");
    assertRefused("[\"17\", \"18\"]", "[\"17\", \"20\"]", "name pin 20, no row has it");
    assertRefused("leadlight/connector/1", "leadlight/connector/2", "schema must be");
    assertRefused("\"kind\": \"slot\"", "\"kind\": \"tab\"", "tabs have none");
    assertRefused("\"open_end\": \"down\"", "\"open_end\": \"north\"", "down, left, up, right");
    assertRefused("\"id\": \"video-a-19-slots\"", "\"id\": \"Video A\"", "\"Video A\"");
  }

  private void assertRefused(String old, String replacement, String message) throws IOException {
    String text = DataFile.builtIn("connectors/video-a-19-slots.json").text();
    assertThat(text).contains(old);
    Path file = Files.writeString(folder.resolve("own.json"), text.replace(old, replacement));
    assertThatThrownBy(() -> LIBRARY.find(file.toString()))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file + ", line ")
        .hasMessageContaining(message)
        .hasMessageNotContaining("\n");
  }
}
