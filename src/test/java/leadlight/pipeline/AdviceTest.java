package leadlight.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.RowSpec;
import org.junit.jupiter.api.Test;

class AdviceTest {

  private final Advice advice = Advice.builtIn();
  private final RowSpec plain =
      RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  private static RowSpec row(String connector) {
    return ConnectorLibrary.builtIn().find(connector).rowSpec(0, OptionalInt.empty());
  }

  @Test
  void everyReportSaysWhatAPhotoFromAboveCannotShow() {
    assertThat(advice.notVisible(plain))
        .anyMatch(line -> line.startsWith("Wetting under the lead"))
        .anyMatch(line -> line.endsWith("1-2, 2-3 and so on to 18-19"));
  }

  @Test
  void aConnectorWithAnchorLegsIsToBeTurnedOver() {
    assertThat(advice.notVisible(plain)).noneMatch(line -> line.contains("anchor legs"));
    assertThat(advice.notVisible(row("video-a-19-holes")))
        .anyMatch(line -> line.contains("anchor legs"));
  }

  @Test
  void aRearRowUnderTheBodyIsNamed() {
    assertThat(advice.notVisible(row("usb-c-24"))).anyMatch(line -> line.contains("rear row"));
    assertThat(advice.notVisible(row("usb-c-16"))).noneMatch(line -> line.contains("rear row"));
  }

  @Test
  void leadlightNeverCertifies() {
    assertThat(advice.cautions(plain, List.of())).anyMatch(line -> line.contains("certifies"));
  }

  @Test
  void heatAndFumeAreNamedOnlyWhereSomethingIsToBeSoldered() {
    assertThat(advice.cautions(plain, List.of())).noneMatch(line -> line.contains("fume"));
  }

  @Test
  void everyConnectorThatASentenceNamesExists() {
    List<String> ids = ConnectorLibrary.builtIn().ids();

    assertThat(Stream.concat(advice.notVisible().stream(), advice.cautions().stream()))
        .flatExtracting(Advice.Sentence::connectors)
        .isNotEmpty()
        .allSatisfy(prefix -> assertThat(ids).anyMatch(id -> id.startsWith(prefix)));
  }

  @Test
  void everySentenceHasASource() {
    assertThat(Stream.concat(advice.notVisible().stream(), advice.cautions().stream()))
        .allSatisfy(sentence -> assertThat(sentence.source()).isNotBlank());
  }
}
