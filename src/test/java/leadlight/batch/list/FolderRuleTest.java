package leadlight.batch.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.connector.RowRequest;
import leadlight.model.UserError;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FolderRuleTest {

  private static final Path DAY = Path.of("/day");

  private static RowRequest row(int leads) {
    return new RowRequest(
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(leads),
        OptionalDouble.of(0.5),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        false);
  }

  private static RowRequest none() {
    return new RowRequest(
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        false);
  }

  private static JobPhoto of(String path, RowRequest row) {
    return new FolderRule(DAY, new Defaults(row, Optional.empty(), 2)).of(DAY.resolve(path));
  }

  @ParameterizedTest
  @CsvSource({
    "a.jpg, day, 1, AS_RECEIVED, 1",
    "J/a.jpg, J, 1, AS_RECEIVED, 1",
    "J/B/a.jpg, J, B, AS_RECEIVED, 1",
    "J/after rework/a.jpg, J, 1, AFTER_REWORK, 1",
    "J/B/After_Rework 2/a.jpg, J, B, AFTER_REWORK, 2",
    "J/B/C/FINAL/a.jpg, J, B/C, FINAL, 1",
    "J/board 2/a.jpg, J, board 2, AS_RECEIVED, 1",
    "final/a.jpg, day, 1, FINAL, 1",
  })
  void foldersSayJobBoardAndStage(String path, String job, String board, Stage stage, int attempt) {
    assertThat(of(path, row(19)).subject()).isEqualTo(new Subject(job, board, stage, attempt));
  }

  @Test
  void bracketsStateTheConnectorAndTheInnermostCounts() {
    JobPhoto photo = of("J [usb-c-24]/B [usb-c-16]/a.jpg", row(19));

    assertThat(photo.row().connectorId()).isEqualTo("usb-c-16");
    assertThat(photo.subject()).isEqualTo(new Subject("J", "B", Stage.AS_RECEIVED, 1));
  }

  @Test
  void aPhotoWithoutARowIsNamed() {
    assertThatThrownBy(() -> of("J/a.jpg", none()))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("/day/J/a.jpg: no row is stated");
    assertThatThrownBy(() -> of("J [usb-d]/a.jpg", none()))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no connector named \"usb-d\"");
  }
}
