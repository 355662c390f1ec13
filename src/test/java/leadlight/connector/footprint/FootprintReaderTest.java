package leadlight.connector.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.LeftOut;
import leadlight.connector.footprint.Footprint.Pad;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FootprintReaderTest {

  @TempDir Path folder;

  @Test
  void openingsHolesAndTheBackAreNoLands() {
    Footprint footprint = FootprintReader.read(Footprints.file("receptacle"));

    assertThat(footprint.leftOut()).isEqualTo(new LeftOut(5, 1, 1, 0, 0));
    assertThat(footprint.pads()).hasSize(7);
  }

  @Test
  void sizeAndDrillStandBeforeRotation() {
    Pad slot = pad(FootprintReader.read(Footprints.file("receptacle")), "SH");

    assertThat(slot.kind()).isEqualTo(Kind.PLATED_HOLE);
    assertThat(slot.widthMm()).isEqualTo(1);
    assertThat(slot.heightMm()).isEqualTo(2);
    assertThat(slot.drill().orElseThrow().widthMm()).isCloseTo(0.6, within(1e-9));
    assertThat(slot.drill().orElseThrow().heightMm()).isCloseTo(1.4, within(1e-9));
  }

  @Test
  void stackedPadsAreOneWithAllTheirNames() {
    Footprint footprint = FootprintReader.read(Footprints.file("stacked"));

    assertThat(footprint.pads())
        .extracting(Pad::name)
        .containsExactly("A1/B12", "A5", "A6", "B6", "B5", "A12/B1");
    assertThat(footprint.leftOut().merged()).isEqualTo(2);
  }

  @Test
  void oldModulesWithBareWordsAndEmptyNamesAreRead() {
    Footprint footprint = FootprintReader.read(Footprints.file("old-module"));

    assertThat(footprint.name()).isEqualTo("old-module");
    assertThat(footprint.body()).isEmpty();
    assertThat(footprint.pads().get(0).names()).isEmpty();
    assertThat(pad(footprint, "MP").heightMm()).isEqualTo(2.2);
  }

  @Test
  void oddPadsKeepTheirCopper() {
    Footprint footprint = FootprintReader.read(Footprints.file("traps"));

    assertThat(footprint.name()).isEqualTo("traps \"quoted\" (not a bracket)");
    assertThat(pad(footprint, "3"))
        .as("a custom shape is as large as its drawing, not its anchor")
        .extracting(Pad::widthMm, Pad::heightMm)
        .containsExactly(0.3, 1.2);
    assertThat(pad(footprint, "SH").yMm())
        .as("a drill's offset moves the copper, not the hole")
        .isEqualTo(3.8);
    assertThat(pad(footprint, "SL").straight()).isFalse();
    assertThat(pad(footprint, "SL").widthMm()).isCloseTo(3 / Math.sqrt(2), within(1e-6));
    assertThat(footprint.leftOut().edgeContacts()).isEqualTo(1);
    assertThat(footprint.body().orElseThrow().heightMm()).isEqualTo(6);
  }

  @Test
  void faultsSayWhereAndWhat() throws IOException {
    assertFault(
        "(footprint \"x\"\n  (pad \"1\" smd rect (size 1 1)))",
        "line 2 column 3: this pad has no at");
    assertFault(
        "(footprint \"x\"\n (pad \"1\" smd rect (at 0 0)\n (size 1 wide) (layers F.Cu)))",
        "line 3 column 10: \"wide\"");
    assertFault(
        "(footprint \"x\" (pad \"1\" smd rect (at 0 0) (size 0 1) (layers F.Cu)))",
        "size must be above 0");
    assertFault(
        "(footprint \"x\" (pad \"1\" glued rect (at 0 0) (size 1 1)))",
        "\"glued\" is no type of pad");
    assertFault(
        "(kicad_pcb (version 1))", "line 1 column 1: \"(footprint\" or \"(module\" is needed");
    assertFault("(footprint)", "footprint lacks its value number 1");
    assertFault("", "the file is empty");
    assertFault("\0\1\2\3", "line 1 column 1");
  }

  @Test
  void aMissingFileAndAFolderAreNamed() {
    assertThatThrownBy(() -> FootprintReader.read(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is no file");
    assertThatThrownBy(() -> FootprintReader.read(folder.resolve("no.kicad_mod")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is no file");
  }

  private void assertFault(String text, String message) throws IOException {
    Path file = Files.writeString(folder.resolve("bad.kicad_mod"), text);
    assertThatThrownBy(() -> FootprintReader.read(file))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file + ", line ")
        .hasMessageContaining(message)
        .hasMessageNotContaining("\n");
  }

  private static Pad pad(Footprint footprint, String name) {
    List<Pad> named = footprint.pads().stream().filter(p -> p.name().equals(name)).toList();
    assertThat(named).isNotEmpty();
    return named.get(0);
  }
}
