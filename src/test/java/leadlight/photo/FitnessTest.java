package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.vision.Frame;
import leadlight.vision.blur.BlurMeter;
import leadlight.vision.blur.GreyScan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitnessTest {

  private static final PictureFacts FIT =
      new PictureFacts(OptionalDouble.of(0.9), 3, 0.01, 0.02, 120);

  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private final Fitness fitness = new Fitness();

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @Test
  void aFitPictureNeedsNoAdvice() {
    assertThat(fitness.advice(FIT, UNKNOWN)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "1.51, 3, 0.01, 0.02, 120, soft-for-pixels",
    "0.9, 12.1, 0.01, 0.02, 120, noisy",
    "0.9, 3, 0.101, 0.02, 120, burnt-out",
    "0.9, 3, 0.01, 0.301, 120, black",
    "0.9, 3, 0.01, 0.02, 29, low-contrast"
  })
  void eachBoundHasANoteOfItsOwn(
      double blur, double noise, double burnt, double black, double contrast, String what) {
    PictureFacts facts = new PictureFacts(OptionalDouble.of(blur), noise, burnt, black, contrast);
    assertThat(fitness.advice(facts, UNKNOWN)).extracting(Note::code).containsExactly(what);
  }

  @ParameterizedTest
  @CsvSource({"1.5, 12, 0.10, 0.30, 30"})
  void onTheBoundNothingIsSaid(
      double blur, double noise, double burnt, double black, double contrast) {
    PictureFacts facts = new PictureFacts(OptionalDouble.of(blur), noise, burnt, black, contrast);
    assertThat(fitness.advice(facts, UNKNOWN)).isEmpty();
  }

  /** Edges of 0.9 px are 0.08 of a pitch of 11.25 px. */
  @ParameterizedTest
  @CsvSource({"11.3, false", "11.2, true"})
  void besideAKnownPitchBlurIsJudgedByIt(double pitchPx, boolean soft) {
    List<Note> advice = fitness.advice(FIT, OptionalDouble.of(pitchPx));
    assertThat(advice.stream().anyMatch(NoteOfPhoto.SoftForPitch.class::isInstance))
        .isEqualTo(soft);
  }

  @Test
  void edgesThatAreSharpByThePixelNeedMorePixels() {
    OptionalDouble pitchPx = OptionalDouble.of(10);
    PictureFacts stretched = new PictureFacts(OptionalDouble.of(1.51), 3, 0.01, 0.02, 120);
    assertThat(fitness.advice(FIT, pitchPx))
        .containsExactly(new NoteOfPhoto.SoftForPitch(0.9, 0.09, true));
    assertThat(fitness.advice(stretched, pitchPx))
        .containsExactly(new NoteOfPhoto.SoftForPitch(1.51, 0.151, false));
  }

  @Test
  void aFlatPictureIsSaidToShowNoEdges() {
    byte[] grey = new byte[64 * 64 * 3];
    Arrays.fill(grey, (byte) 120);
    try (Frame frame = Frame.ofRgb(64, 64, grey)) {
      PictureFacts facts = fitness.facts(frame);
      assertThat(facts.edgeBlurPx()).isEmpty();
      assertThat(facts.contrast()).isZero();
      assertThat(fitness.advice(facts, UNKNOWN)).contains(new NoteOfPhoto.NoEdges());
    }
  }

  /** The rendered samples say their true blur, to which pixel and JPEG add a little. */
  @Test
  void theBlurOfTheSamplePicturesIsFound() throws IOException {
    List<Double> errors = new ArrayList<>();
    for (Path truth : truths(Path.of("sample-images"))) {
      errors.add(Math.abs(blurError(truth)));
    }
    errors.sort(null);
    assertThat(errors).hasSizeGreaterThan(3);
    assertThat(errors.get(errors.size() / 2)).isCloseTo(0, within(0.2));
  }

  private static double blurError(Path truthFile) throws IOException {
    JsonNode truth = new ObjectMapper().readTree(truthFile.toFile());
    Path picture = truthFile.resolveSibling(truth.get("photo").asText());
    try (Photo photo = new PhotoReader().read(picture);
        GreyScan scan = new GreyScan(photo.frame())) {
      return BlurMeter.edgeSigmaPx(scan).orElseThrow() - truth.get("edge_blur_px").asDouble();
    }
  }

  private static List<Path> truths(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".truth.json")).sorted().toList();
    }
  }
}
