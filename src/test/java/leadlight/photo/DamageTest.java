package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import leadlight.model.UserError;
import leadlight.vision.Frame;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever happens to a file's bytes, reading ends in a photo or in one line. */
class DamageTest {

  private static final int TRIES = 150;

  private final PhotoReader reader = new PhotoReader();

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "time-offset.jpg",
        "orientation-6.png",
        "orientation-6.webp",
        "lossy.webp",
        "orientation-6.tif",
        "sixteen-bits.tif",
        "two-pages.tif",
        "base.bmp"
      })
  void alteredBytesEndInAPhotoOrInOneLine(String name) throws IOException {
    byte[] whole = Samples.bytes(name);
    Random random = new Random(name.hashCode());
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      Path file = Files.write(folder.resolve("altered"), altered(whole, random));
      try (Photo photo = reader.read(file)) {
        assertThat(photo.frame().widthPx()).isPositive();
      } catch (UserError e) {
        refused++;
        assertThat(e.getMessage().lines()).hasSize(1);
      }
    }
    assertThat(refused).as("some alterations must be noticed").isPositive();
    assertThat(Frame.live()).isZero();
  }

  /** Alters one to four bytes, half of the times among the first 200, where headers are. */
  private static byte[] altered(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    int head = random.nextBoolean() ? Math.min(200, bytes.length) : bytes.length;
    for (int n = random.nextInt(4); n >= 0; n--) {
      bytes[random.nextInt(head)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
