package leadlight.batch.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.connector.RowRequest;
import leadlight.model.BoardSide;
import leadlight.model.BodySide;
import leadlight.model.UserError;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ManifestTest {

  @TempDir private Path folder;

  private List<JobPhoto> read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("day.csv"), text);
    return Manifest.read(
        file, new Defaults(RowRequest.of("usb-c-16"), Optional.of(BodySide.LEFT), 2));
  }

  @Test
  void aLineSaysAllOfAPhoto() throws IOException {
    JobPhoto photo =
        read("photo,job,board,stage,attempt,leads,pitch_mm,body,class\n"
                + "\"a, b.jpg\",\"job \"\"x\"\"\",left,after rework,2,19,0.5,below,3\n")
            .get(0);

    assertThat(photo.photo()).isEqualTo(folder.resolve("a, b.jpg"));
    assertThat(photo.subject()).isEqualTo(new Subject("job \"x\"", "left", Stage.AFTER_REWORK, 2));
    assertThat(photo.row().leads()).isEqualTo(19);
    assertThat(photo.body()).contains(BodySide.BELOW);
    assertThat(photo.productClass()).isEqualTo(3);
  }

  @Test
  void aPhotoOfAnchorLegsSaysItsSide() throws IOException {
    List<JobPhoto> photos = read("photo,job,legs\na.jpg,j,solder\nb.jpg,j,\n");

    assertThat(photos)
        .extracting(JobPhoto::legs)
        .containsExactly(Optional.of(BoardSide.SOLDER), Optional.empty());
  }

  @Test
  void whatIsLeftOutIsTakenFromTheCommand() throws IOException {
    JobPhoto photo = read("photo,job\na.jpg,j\n").get(0);

    assertThat(photo.subject()).isEqualTo(new Subject("j", "1", Stage.AS_RECEIVED, 1));
    assertThat(photo.row().connectorId()).isEqualTo("usb-c-16");
    assertThat(photo.body()).contains(BodySide.LEFT);
    assertThat(photo.productClass()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "photo,jobb\\na.jpg,j | line 1: no column \"job\"",
        "photo,job,colour\\na.jpg,j,red | line 1: unknown column \"colour\"",
        "photo,job\\na.jpg,j\\nb.jpg, | line 3, column job: is empty",
        "photo,job,stage\\na.jpg,j,later | line 2, column stage: must be",
        "photo,job,legs\\na.jpg,j,below | line 2, column legs: must be solder or component, is below",
        "photo,job,class\\na.jpg,j,4 | line 2, column class: must be 1 to 3, is 4",
        "photo,job,body\\na.jpg,j,up | line 2, column body: must be above, right, below or left, is up",
        "photo,job,connector\\na.jpg,j,usb-d | line 2, column connector: no connector",
        "photo,job,leads,pitch_mm\\na.jpg,j,19,'0,5' | line 2",
        "photo,job\\na.jpg,j\\na.jpg,j | line 3: the same as line 2",
        "photo,job | lists no photo",
      })
  void anErrorNamesLineAndColumn(String text, String expected) {
    assertThatThrownBy(() -> read(text.replace("\\n", "\n") + "\n"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining(expected);
  }
}
