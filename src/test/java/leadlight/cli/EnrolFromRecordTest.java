package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.enrol.BenchFolder;
import leadlight.enrol.learn.Enrolment;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was prodded teaches the bench by a version that is shown before it counts. */
class EnrolFromRecordTest {

  @TempDir private Path folder;

  @BeforeEach
  void enrolled() {
    EnrolledRing.in(folder.resolve("benches"));
  }

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Run enrol(Object... more) {
    List<Object> args = new ArrayList<>(List.of("enrol", "ring"));
    args.addAll(List.of("--benches", folder.resolve("benches")));
    args.addAll(Arrays.asList(more));
    return Run.of(args.toArray());
  }

  private Run fromRecord() {
    return enrol("--from-record", "--record", folder.resolve("record"));
  }

  private void scored(String photo, Object... more) {
    List<Object> args = new ArrayList<>(List.of("score", EnrolledRing.picture(photo)));
    args.addAll(List.of("--out", folder.resolve("out"), "--leads", 19, "--pitch", 0.5));
    args.addAll(List.of("--job", "0412", "--record", folder.resolve("record")));
    args.addAll(List.of("--benches", folder.resolve("benches")));
    args.addAll(Arrays.asList(more));
    assertThat(Run.of(args.toArray()).err()).isEmpty();
  }

  private void prodded(int scoring, int pin, String result) {
    Run run = Run.of("record", "prod", scoring, pin, result, "--record", folder.resolve("record"));
    assertThat(run.err()).isEmpty();
  }

  @Test
  void proddedJointsTeachAVersionThatIsShownBeforeItIsAdopted() throws IOException {
    scored("mixed-0", "--bench", "ring");
    prodded(1, 3, "moves");
    prodded(1, 2, "firm");
    prodded(1, 4, "firm");

    Run proposed = fromRecord();
    assertThat(proposed.err()).isEmpty();
    assertThat(proposed.out())
        .contains("1 photos judged as of this bench")
        .contains("unsoldered: 1 by the bench, 0 by a person's eye; sound: 2 prodded")
        .contains("never prodded, metered or judged by a person: 16 joints; they prove nothing")
        .contains("who prods chooses")
        .contains("verdict")
        .contains("bench ring, version 2")
        .contains("mixed-0.jpg: 3 joints, recorded")
        .contains("below all 38 unsoldered joints of 2 photos shown: up to 8 %")
        .contains("proposed, not in use");
    assertThat(folder.resolve("benches/ring/2.json")).doesNotExist();

    assertThat(enrol("--adopt").out()).contains("bench ring, version 2");
    Enrolment second = new BenchFolder(folder.resolve("benches"), "ring").inUse();
    assertThat(second.photos()).filteredOn(it -> it.kind() == Enrolment.Kind.RECORDED).hasSize(1);
    assertThat(enrol("--adopt").err()).contains("nothing is proposed");
    Run.of("record", "prod", 1, 3, "--take-back", "--record", folder.resolve("record"));
    Run again = fromRecord();
    assertThat(again.out())
        .as("a word that was taken back teaches no more")
        .contains("bench ring, version 3")
        .contains("mixed-0.jpg: 2 joints, recorded");
    assertThat(enrol("--undo").out()).contains("bench ring, version 1");
    assertThat(enrol("--adopt").err())
        .as("it was proposed on top of what was taken back")
        .contains("nothing is proposed");
  }

  @Test
  void photosThatNameNoBenchAndAPhotoThatIsGoneTeachNothing() throws IOException {
    scored("mixed-0", "--no-bench");
    prodded(1, 3, "moves");
    assertThat(fromRecord().err()).contains("teaches bench ring nothing yet");
    assertThat(folder.resolve("benches/ring/proposed.json")).doesNotExist();
  }

  @Test
  void aWordAgainstWhatWasShownIsRefused() throws IOException {
    scored("sound-0", "--bench", "ring");
    prodded(1, 4, "moves");
    Run run = fromRecord();
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("pin 4 of sound-0.jpg was shown as sound");
    assertThat(Files.exists(folder.resolve("benches/ring/proposed.json"))).isFalse();
  }
}
