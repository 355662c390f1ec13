package leadlight.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFileTest {

  enum Lamp {
    RING_LAMP,
    DOME
  }

  record Sample(
      @JsonProperty(required = true) String id,
      @JsonProperty(required = true) double pitchMm,
      OptionalDouble widthMm,
      Optional<String> note,
      Lamp lamp,
      List<Integer> pins) {
    Sample {
      if (!(pitchMm > 0)) {
        throw new IllegalArgumentException("pitch_mm must be above 0, is " + pitchMm);
      }
      pins = pins == null ? List.of() : List.copyOf(pins);
    }
  }

  @TempDir Path folder;

  @Test
  void namesAreSnakeCaseAndOptionalOnesMayBeAbsent() throws IOException {
    Sample sample = read("{\"id\": \"a\", \"pitch_mm\": 0.5, \"lamp\": \"ring-lamp\"}");

    assertThat(sample)
        .isEqualTo(
            new Sample(
                "a", 0.5, OptionalDouble.empty(), Optional.empty(), Lamp.RING_LAMP, List.of()));
  }

  @Test
  void whatIsWrittenReadsBackEqual() {
    Sample sample =
        new Sample("ä", 0.4, OptionalDouble.of(0.2), Optional.of("n"), Lamp.DOME, List.of(1, 2));
    Path file = folder.resolve("x.json");
    DataFile.write(file, sample);

    assertThat(DataFile.at(file).read(Sample.class)).isEqualTo(sample);
    assertThat(folder).isDirectoryNotContaining(p -> p.toString().endsWith(".part"));
  }

  @Test
  void everyFaultIsOneLineWithItsPlace() {
    assertFault(
        "{\"id\": \"a\", \"pitch_mm\": 1,\n \"pich_mm\": 1}",
        "line 2 column",
        "pich_mm: unknown name");
    assertFault("{\"id\": \"a\"}", "Missing required", "pitch_mm");
    assertFault("{\"id\": \"a\", \"pitch_mm\": -1}", "pitch_mm must be above 0, is -1.0");
    assertFault(
        "{\"id\": \"a\", \"pitch_mm\": \"wide\"}",
        "pitch_mm: String (\"wide\") where double is needed");
    assertFault("{\"id\": \"a\", \"pitch_mm\": \"1\"}", "pitch_mm");
    assertFault("{\"id\": 5, \"pitch_mm\": 1}", "id");
    assertFault("{\"id\": \"a\", \"id\": \"b\", \"pitch_mm\": 1}", "Duplicate");
    assertFault("{\"id\": \"a\", \"pitch_mm\": 1} x", "line 1 column");
    assertFault("{\"id\": \"a\", \"pitch_mm\": 1, \"lamp\": \"sun\"}", "one of ring-lamp, dome");
    assertFault("{\"id\": \"a\", \"pitch_mm\": 1, \"pins\": [1.5]}", "pins[0]");
    assertFault("", "");
    assertFault("[", "line 1");
  }

  @Test
  void aMissingFileAndAFolderAreNamed() {
    assertThatThrownBy(() -> DataFile.at(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is a folder");
    assertThatThrownBy(() -> DataFile.at(folder.resolve("no.json")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("does not exist");
    assertThatThrownBy(() -> DataFile.write(folder.resolve("no/x.json"), List.of()))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("cannot be written");
  }

  private Sample read(String json) throws IOException {
    Path file = Files.writeString(folder.resolve("s.json"), json);
    return DataFile.at(file).read(Sample.class);
  }

  private void assertFault(String json, String... parts) {
    assertThatThrownBy(() -> read(json))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("s.json")
        .hasMessageNotContaining("leadlight.")
        .hasMessageNotContaining("java.")
        .message()
        .doesNotContain("\n")
        .contains(parts);
  }
}
