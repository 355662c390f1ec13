package leadlight.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import leadlight.model.Opinions;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.ScoredPhoto;
import leadlight.trial.Tally;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AlteredPhotoTest {

  private static final List<TrialPhoto> SAMPLES = TruthFolder.read(Path.of("sample-images"));

  @TempDir private Path scratch;

  private AlteredTrial.Result result(String sample, Alteration alteration) throws IOException {
    TrialPhoto photo =
        SAMPLES.stream()
            .filter(one -> one.file().getFileName().toString().equals(sample + ".jpg"))
            .findFirst()
            .orElseThrow();
    return AlteredTrial.run(photo, alteration, Opinions.BOTH, scratch);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 37, 90, 180, 270})
  void pinOneIsRightAtAnyAngle(double angleDeg) throws IOException {
    PhotoOutcome outcome = result("logger-sensor-open", Alteration.rotated(angleDeg)).outcome();

    assertThat(outcome.row()).isEqualTo(RowResult.RIGHT);
    assertThat(Tally.of(outcome.joints()).missed().count()).isZero();
    assertThat(Tally.of(outcome.joints()).falseCalls().count()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 6})
  void belowTenPixelsAPitchNoJointIsCalledGood(double pitchPx) throws IOException {
    ScoredPhoto scored = result("base-station-video-good", Alteration.shrunk(pitchPx)).scored();

    assertThat(scored.joints())
        .extracting(GradedJoint::verdict)
        .doesNotContain(Verdict.ACCEPTABLE, Verdict.PROCESS_INDICATOR);
  }

  @Test
  void aBlurredPhotoIsToldSo() throws IOException {
    ScoredPhoto scored = result("base-station-video-good", Alteration.blurred(0.15)).scored();

    assertThat(scored.fitness()).anyMatch(note -> note instanceof NoteOfPhoto.SoftForPitch);
  }

  @Test
  void aBurntOutPhotoIsToldSo() throws IOException {
    ScoredPhoto scored = result("base-station-video-good", Alteration.overexposed(3)).scored();

    assertThat(scored.fitness()).anyMatch(note -> note instanceof NoteOfPhoto.BurntOut);
  }
}
