package leadlight.cli.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import leadlight.cli.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReaderCommandTest {

  private static final int PICTURE = 3 * 136 * 64;

  @TempDir private Path folder;

  private Path oneSample() throws IOException {
    Path photos = Files.createDirectory(folder.resolve("photos"));
    for (String end : List.of(".jpg", ".truth.json")) {
      String name = "logger-sensor-open" + end;
      Files.copy(Path.of("sample-images", name), photos.resolve(name));
    }
    return photos;
  }

  @Test
  void patchesHoldAPictureForEachLineAndARowsTypicalOne() throws IOException {
    Path out = folder.resolve("patches");

    Run run = Run.of("reader", "patches", oneSample(), "--out", out);

    assertThat(run.status()).as(run.err()).isZero();
    List<String> lines = Files.readAllLines(out.resolve("joints.csv"));
    assertThat(lines.get(0)).contains("condition", "class2", "m_unwetted", "m_bridge_after");
    assertThat(Files.size(out.resolve("joints.bin"))).isEqualTo((lines.size() - 1L) * PICTURE);
    assertThat(Files.size(out.resolve("typical.bin"))).isEqualTo(PICTURE);
    try (var files = Files.list(out)) {
      assertThat(files).hasSize(3);
    }
  }

  @Test
  void aRowAtAWrongPlaceIsCutTooAndNotedAsWrong() throws IOException {
    Path out = folder.resolve("patches");

    Run run = Run.of("reader", "patches", oneSample(), "--astray", "--out", out);

    assertThat(run.status()).as(run.err()).isZero();
    List<String> lines = Files.readAllLines(out.resolve("joints.csv"));
    long right = lines.stream().filter(line -> line.contains(",RIGHT,")).count();
    assertThat(right).isPositive();
    assertThat(lines.stream().filter(line -> line.contains(",WRONG,"))).hasSize((int) right);
    byte[] joints = Files.readAllBytes(out.resolve("joints.bin"));
    int half = joints.length / 2;
    assertThat(Arrays.mismatch(joints, 0, half, joints, half, 2 * half)).isNotNegative();
    assertThat(Files.size(out.resolve("typical.bin"))).isEqualTo(2L * PICTURE);
  }

  @Test
  void patchesOfNoFolderAreRefusedInOneLine() {
    Run run = Run.of("reader", "patches", folder.resolve("none"));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err().strip()).hasLineCount(1).contains("none");
  }
}
