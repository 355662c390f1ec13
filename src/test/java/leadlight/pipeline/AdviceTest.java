package leadlight.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.api.Test;

class AdviceTest {

  private final Advice advice = Advice.builtIn();
  private final RowSpec plain =
      RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  private static RowSpec row(String connector) {
    return ConnectorLibrary.builtIn().find(connector).rowSpec(0, OptionalInt.empty());
  }

  private static List<String> ids(List<Note> notes) {
    return notes.stream().map(note -> ((NoteOfPhoto.Advice) note).id()).toList();
  }

  @Test
  void everyReportSaysWhatAPhotoFromAboveCannotShow() {
    assertThat(advice.notVisible(plain))
        .contains(
            new NoteOfPhoto.Advice("under-lead", 19),
            new NoteOfPhoto.Advice("bridges-under-body", 19));
    assertThat(ids(advice.notVisible(plain))).as("sameness is no proof").contains("alike");
  }

  @Test
  void aConnectorWithAnchorLegsIsToBeTurnedOver() {
    assertThat(ids(advice.notVisible(plain))).doesNotContain("anchor-legs");
    assertThat(ids(advice.notVisible(row("video-a-19-holes")))).contains("anchor-legs");
  }

  @Test
  void aRearRowUnderTheBodyIsNamed() {
    assertThat(ids(advice.notVisible(row("usb-c-24")))).contains("rear-row");
    assertThat(ids(advice.notVisible(row("usb-c-16")))).doesNotContain("rear-row");
  }

  @Test
  void leadlightNeverCertifies() {
    assertThat(ids(advice.cautions(plain, List.of()))).contains("no-certificate");
  }

  @Test
  void heatAndFumeAreNamedOnlyWhereSomethingIsToBeSoldered() {
    assertThat(ids(advice.cautions(plain, List.of()))).doesNotContain("fume");
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
