package leadlight.connector.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.connector.AnchorLegs;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.ConnectorRow;
import leadlight.connector.Mm;
import leadlight.model.UserError;
import leadlight.model.row.LandSpec;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the Debian package kicad-footprints 6.0.11-1 where it is installed (apt-get install
 * kicad-footprints); skipped elsewhere. Its files stay where they are.
 */
class FootprintPackageTest {

  private static final Path PACKAGE = Path.of("/usr/share/kicad/footprints");

  @BeforeEach
  void needThePackage() {
    assumeTrue(Files.isDirectory(PACKAGE), "kicad-footprints is not installed: not checked");
  }

  /**
   * Counted apart with grep and a script: 12,504 files, 166 of them {@code (module}; 8,881 surface
   * pads without a copper layer, 8,680 of these with paste layers alone.
   */
  @Test
  void everyFileIsReadAndEveryImportGivesRowsOrAReason() throws IOException {
    List<String> unread = new ArrayList<>();
    Set<String> reasons = new TreeSet<>();
    int withoutCopper = 0;
    int imported = 0;
    List<Path> files = files("**.kicad_mod");
    for (Path file : files) {
      try {
        withoutCopper += FootprintReader.read(file).leftOut().withoutCopper();
      } catch (UserError e) {
        unread.add(e.getMessage());
      }
      try {
        imported += FootprintImport.of(file, Optional.empty()).connector().rows().isEmpty() ? 0 : 1;
      } catch (UserError e) {
        reasons.add(e.getMessage().replace(file.toString(), "").replaceAll("\\d+", "N"));
      }
    }
    assertThat(files).hasSize(12_504);
    assertThat(unread).isEmpty();
    assertThat(withoutCopper).isEqualTo(8_881);
    assertThat(imported).isGreaterThan(3_000);
    assertThat(reasons)
        .containsExactly(
            ": no row of three or more surface lands; it has N plated holes and N lands on the"
                + " front");
  }

  @ParameterizedTest
  @CsvSource({
    "video-a-19-slots, **/HDMI_A_*",
    "video-a-19-holes, **/HDMI_A_*",
    "video-d-19,       **/HDMI_Micro-D_*",
    "usb-c-16,         **/USB_C_Receptacle_*",
    "usb-c-24,         **/USB_C_Receptacle_*",
    "flex-0.5,         **/Connector_FFC-FPC.pretty/*_1x24*P0.50*",
    "mezzanine-0.4,    **/*_2x20_P0.40mm_Vertical*",
    "mezzanine-0.5,    **/*_2x20_P0.50mm_Vertical*",
    "quad-flat-0.4,    **/LQFP-128_14x14mm_P0.4mm*",
    "quad-flat-0.5,    **/LQFP-64_10x10mm_P0.5mm*",
    "quad-flat-0.65,   **/LQFP-80_14x14mm_P0.65mm*",
    "quad-flat-0.8,    **/LQFP-44_10x10mm_P0.8mm*"
  })
  void everyBuiltInGeometryIsThatOfAFootprint(String id, String glob) throws IOException {
    Connector builtIn = ConnectorLibrary.builtIn().find(id);
    List<Connector> imports = new ArrayList<>();
    for (Path file : files(glob + ".kicad_mod")) {
      try {
        imports.add(FootprintImport.of(file, Optional.empty()).connector());
      } catch (UserError e) {
        assertThat(e).hasMessageContaining("no row of three or more surface lands");
      }
    }
    assertThat(imports).isNotEmpty();
    assertThat(imports).anyMatch(imported -> agrees(builtIn, imported));
  }

  private static boolean agrees(Connector builtIn, Connector imported) {
    if (imported.rows().size() < builtIn.rows().size()) {
      return false;
    }
    boolean numbered = !builtIn.rows().get(0).lands().anyCount();
    for (int i = 0; i < builtIn.rows().size(); i++) {
      if (!geometry(builtIn.rows().get(i), numbered)
          .equals(geometry(imported.rows().get(i), numbered))) {
        return false;
      }
    }
    return legs(builtIn).equals(legs(imported));
  }

  /**
   * Places and sizes, and the numbering unless the number of leads is open: makers differ there.
   */
  private static List<Object> geometry(ConnectorRow row, boolean numbered) {
    List<Object> all = new ArrayList<>(List.of(row.xMm(), row.yMm(), row.openEnd()));
    for (LandSpec land : row.lands().at(OptionalInt.empty())) {
      all.add(List.of(land.uMm(), land.widthMm(), land.lengthMm()));
      all.add(numbered ? land.name() + row.pin1() : "");
    }
    return all;
  }

  private static Set<String> legs(Connector connector) {
    double halfMm = connector.rowSpec(0, OptionalInt.empty()).spanMm() / 2;
    return connector.legs().map(AnchorLegs::each).orElse(List.of()).stream()
        .map(
            leg ->
                leg.kind()
                    + " "
                    + Mm.tidy(
                        leg.xMm()
                            + switch (leg.from()) {
                              case MIDDLE -> 0;
                              case LEFT_END -> -halfMm;
                              case RIGHT_END -> halfMm;
                            })
                    + " "
                    + leg.yMm()
                    + leg.land()
                    + leg.opening())
        .collect(Collectors.toSet());
  }

  private static List<Path> files(String glob) throws IOException {
    PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + glob);
    try (Stream<Path> files = Files.walk(PACKAGE)) {
      return files.filter(matcher::matches).sorted().toList();
    }
  }
}
