package leadlight.trial.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import leadlight.model.BodySide;
import leadlight.model.PointPx;
import leadlight.model.UserError;
import leadlight.model.row.RowOutcome;
import leadlight.trial.Truths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TruthFolderTest {

  private static final Path SAMPLES = Path.of("sample-images");

  @TempDir private Path folder;

  @Test
  void everySampleHasTruthThatHangsTogether() {
    List<TrialPhoto> photos = TruthFolder.read(SAMPLES);

    assertThat(photos).hasSizeGreaterThanOrEqualTo(5);
    assertThat(photos)
        .allSatisfy(
            photo ->
                assertThat(photo.truth().orElseThrow().joints())
                    .hasSize(photo.truth().orElseThrow().leads()));
  }

  @Test
  void theTrueRowMapsMillimetresToTheTrueLands() {
    for (TrialPhoto photo : TruthFolder.read(SAMPLES)) {
      PhotoTruth truth = photo.truth().orElseThrow();
      RowOutcome.Found row = TruthRow.of(truth);
      for (JointTruth joint : truth.joints()) {
        PointPx land =
            row.mmToPx().map((joint.pin() - 1) * truth.pitchMm(), truth.landAheadOfToeMm());
        // Lens distortion is left over: it is in the pictures and not in a plane map.
        assertThat(land.distanceTo(joint.landToePx())).isLessThan(0.03 * truth.pitchPx());
      }
      assertThat(row.scalePxPerMm() * truth.pitchMm()).isCloseTo(truth.pitchPx(), within(1e-9));
    }
  }

  @Test
  void gradesOfARealRowAreReadByLead() throws IOException {
    Files.writeString(folder.resolve("f.jpg"), "");
    Files.writeString(
        folder.resolve("f.row.json"),
        """
        {"photo": "f.jpg", "kind": "QFP", "leads": 3, "pitch_px": 40, "pitch_mm_assumed": 0.5,
         "uneven": false, "towards_body": [0, -1], "lead_centre_px": [[0, 0], [40, 0], [80, 0]],
         "half_length_px": 15, "factory": false, "assembly": "hand",
         "grades": {"1": {"grade": "good", "kind": "", "sure": 3},
                    "3": {"grade": "bad", "kind": "open", "sure": 2}}}
        """);

    RowNote note = TruthFolder.read(folder).get(0).note().orElseThrow();

    assertThat(note.grades())
        .containsExactlyInAnyOrderEntriesOf(Map.of(1, RowNote.Grade.GOOD, 3, RowNote.Grade.BAD));
  }

  @Test
  void theTrueRowKnowsItsBody() {
    PhotoTruth truth =
        Truths.row(
            Truths.joint(1, TrueClass.ACCEPTABLE),
            Truths.joint(2, TrueClass.ACCEPTABLE),
            Truths.missing(3));

    RowOutcome.Found row = TruthRow.of(truth);

    assertThat(row.bodySide()).isEqualTo(BodySide.ABOVE);
    assertThat(row.leads().get(2).toePx().distanceTo(new PointPx(130, 100)))
        .as("a missing lead's toe is where the row expects it")
        .isLessThan(1e-6);
  }

  @Test
  void aFolderWithoutTruthIsNamed() {
    assertThatThrownBy(() -> TruthFolder.read(folder))
        .isInstanceOf(UserError.class)
        .hasMessage(folder + ": no *.truth.json and no *.row.json file in it");
  }

  @Test
  void aPathThatIsNoFolderIsNamed() {
    assertThatThrownBy(() -> TruthFolder.read(folder.resolve("none")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("not a folder");
  }

  @Test
  void truthThatIsNoJsonIsNamedWithItsLine() throws IOException {
    Path file = Files.writeString(folder.resolve("a.truth.json"), "{\n \"photo\": oops}");

    assertThatThrownBy(() -> TruthFolder.read(folder))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file + ": line 2: ");
  }

  @Test
  void truthThatLacksANumberIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("a.truth.json"), "{\"photo\": \"a.jpg\"}");

    assertThatThrownBy(() -> TruthFolder.read(folder))
        .hasMessage(file + ": not as a truth file should be: \"tilt_rad\" is missing");
  }

  @Test
  void truthWithoutItsPhotoIsNamed() throws IOException {
    Path sample = SAMPLES.resolve("logger-sensor-open.truth.json");
    Files.copy(sample, folder.resolve("a.truth.json"));

    assertThatThrownBy(() -> TruthFolder.read(folder)).hasMessageContaining("is not beside it");
  }
}
