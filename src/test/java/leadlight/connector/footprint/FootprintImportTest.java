package leadlight.connector.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.ConnectorRow;
import leadlight.connector.ConnectorRow.End;
import leadlight.connector.ConnectorRow.OpenEnd;
import leadlight.connector.Lands;
import leadlight.connector.Leg;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FootprintImportTest {

  @TempDir Path folder;

  @Test
  void aRowAndItsLegsStandInTheFrameOfTheBodyAboveTheLeads() {
    Connector connector = Footprints.imported("receptacle").connector();
    ConnectorRow row = connector.rows().get(0);

    assertThat(connector.rows()).hasSize(1);
    assertThat(row.openEnd()).isEqualTo(OpenEnd.DOWN);
    assertThat(row.pin1()).isEqualTo(End.LEFT);
    assertThat(row.lands())
        .isEqualTo(new Lands.Even(5, 0.5, 0.3, 1.4, List.of(), Optional.empty()));
    assertThat(connector.legs().orElseThrow().each())
        .containsExactlyInAnyOrder(slot(-2.5), slot(2.5));
  }

  private static Leg slot(double xMm) {
    return new Leg(
        "SH",
        Leg.Kind.SLOT,
        Leg.Origin.MIDDLE,
        xMm,
        -3.5,
        new Leg.Size(1, 2),
        Optional.of(new Leg.Size(0.6, 1.4)));
  }

  @Test
  void howTheDrawingIsTurnedMakesNoDifference() {
    Connector upright = Footprints.imported("receptacle").connector();
    Connector turned = Footprints.imported("receptacle-turned").connector();

    assertThat(turned.rows()).isEqualTo(upright.rows());
    assertThat(turned.legs().orElseThrow().each())
        .containsExactlyElementsOf(upright.legs().orElseThrow().each());
  }

  @Test
  void anUnevenRowKeepsEveryPlace() {
    Connector connector = Footprints.imported("stacked").connector();
    RowSpec spec = connector.rowSpec(0, OptionalInt.empty());

    assertThat(spec.lands())
        .extracting(LandSpec::uMm)
        .containsExactly(0.0, 0.85, 1.35, 1.85, 2.35, 3.2);
    assertThat(spec.lands())
        .extracting(LandSpec::name)
        .startsWith("A1/B12", "A5")
        .endsWith("A12/B1");
    assertThat(spec.pitchMm()).isEqualTo(0.5);
    assertThat(spec.pin1Reversed()).as("A1 is on the right when the body is above").isTrue();
  }

  @Test
  void aRowBehindAnotherIsTakenAsHidden() {
    FootprintImport.Imported imported = Footprints.imported("two-rows-behind");
    List<ConnectorRow> rows = imported.connector().rows();

    assertThat(rows).extracting(ConnectorRow::underBody).containsExactly(false, true);
    assertThat(rows.get(1).yMm()).isEqualTo(-1.7);
    assertThat(rows).extracting(ConnectorRow::pin1).containsExactly(End.RIGHT, End.LEFT);
    assertThat(imported.remarks()).anyMatch(remark -> remark.contains("stands behind another"));
  }

  @Test
  void whatIsGuessedOrLeftOutIsSaid() {
    FootprintImport.Imported imported = Footprints.imported("old-module");

    assertThat(imported.remarks())
        .anyMatch(remark -> remark.contains("no body outline"))
        .anyMatch(remark -> remark.contains("give no order"));
    assertThat(imported.connector().legs().orElseThrow().each())
        .extracting(Leg::kind)
        .containsExactly(Leg.Kind.TAB);
    assertThat(Footprints.imported("receptacle").remarks())
        .containsExactly(
            "5 paste or mask openings without copper left out",
            "1 lands of the back left out",
            "1 holes without copper left out");
  }

  @Test
  void anImportIsSavedAndReadBack() {
    Connector connector = Footprints.imported("stacked").connector();
    Path file = folder.resolve("stacked.json");
    DataFile.write(file, connector);

    assertThat(ConnectorLibrary.builtIn().find(file.toString())).isEqualTo(connector);
  }

  @Test
  void aPartWithoutSurfaceLandsIsRefusedWithTheReason() {
    assertThatThrownBy(() -> Footprints.imported("holes-alone"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no row of three or more surface lands; it has 3 plated holes");
  }

  @Test
  void aLandLongerThanAnyIsRefusedWithTheFile(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("stretched.kicad_mod");
    Files.writeString(
        file,
        Files.readString(Footprints.file("two-rows-behind"))
            .replaceFirst("\\(size 0.3 0.7\\)", "(size 0.3 117)"));
    assertThatThrownBy(() -> FootprintImport.of(file, Optional.empty()))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file.toString())
        .hasMessageContaining("is 117.0");
  }

  @Test
  void anIdThatNoCommandCouldTakeIsRefused() {
    assertThatThrownBy(() -> FootprintImport.of(Footprints.file("stacked"), Optional.of("My Part")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("\"My Part\"");
  }
}
