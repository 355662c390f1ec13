package leadlight.photo.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.photo.jpeg.JpegWalk;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a decoder covers up is named. {@code leadlight.bench.DamageBenchmark} counts it over all
 * samples and against verdicts; docs/trust.md has the figures.
 */
class WholeJpegTest {

  private static final Path SAMPLE = Path.of("sample-images", "logger-radio-bad-first-try.jpg");

  private final PhotoReader reader = new PhotoReader();

  @TempDir Path folder;

  static Stream<Path> goodFiles() throws IOException {
    try (Stream<Path> samples = Files.list(Path.of("sample-images"));
        Stream<Path> kinds = Files.list(Path.of("src/test/resources/photo/kinds"))) {
      return Stream.concat(samples, kinds)
          .filter(file -> file.toString().endsWith(".jpg"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void aWholePictureOfAnyKindIsRead(Path file) {
    try (Photo photo = reader.read(file)) {
      assertThat(photo.frame().widthPx()).isPositive();
    }
  }

  @Test
  void dataBehindThePicturesEndAreNoDamage() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    byte[] longer = Arrays.copyOf(whole, whole.length + 3000);
    new Random(3).nextBytes(longer);
    System.arraycopy(whole, 0, longer, 0, whole.length);
    reader.read(Files.write(folder.resolve("longer.jpg"), longer)).close();
  }

  private static byte[] padded(byte[] whole, int zeros) {
    byte[] longer = Arrays.copyOf(whole, whole.length + zeros);
    longer[whole.length - 2] = 0;
    longer[whole.length - 1] = 0;
    longer[longer.length - 2] = (byte) 0xff;
    longer[longer.length - 1] = (byte) 0xd9;
    return longer;
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void zerosBeforeThePicturesEndAreNoDamage(Path file) throws IOException {
    byte[] whole = Files.readAllBytes(file);
    boolean endsThere =
        whole[whole.length - 2] == (byte) 0xff && whole[whole.length - 1] == (byte) 0xd9;
    assumeThat(endsThere).as("the file ends with its picture").isTrue();
    for (int zeros : new int[] {1, 2, 7, 60, 70_000}) {
      assertThat(refusal(padded(whole, zeros))).as("%d zeros", zeros).isNull();
    }
  }

  @Test
  void whatADecoderWouldRemarkUponIsUnusual() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    byte[] filledUp = Arrays.copyOf(whole, whole.length + 20);
    Arrays.fill(filledUp, whole.length - 2, filledUp.length, (byte) 0);
    filledUp[filledUp.length - 2] = (byte) 0xff;
    filledUp[filledUp.length - 1] = (byte) 0xd9;
    assertThat(look(whole)).isEqualTo(new JpegWalk.Look(Optional.empty(), false));
    assertThat(look(filledUp)).isEqualTo(new JpegWalk.Look(Optional.empty(), true));
  }

  private static JpegWalk.Look look(byte[] file) {
    return JpegWalk.at(
        (at, into) -> {
          int length = (int) Math.max(0, Math.min(into.length, file.length - at));
          System.arraycopy(file, (int) Math.min(at, file.length), into, 0, length);
          return length;
        },
        PhotoLimits.standard().whole().jpeg());
  }

  @Test
  void zerosInPlaceOfTheLastBytesOfAPictureAreNamed() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    for (int lost = 8; lost <= 512; lost++) {
      byte[] bytes = whole.clone();
      Arrays.fill(bytes, whole.length - 2 - lost, whole.length - 2, (byte) 0);
      assertNamed(bytes);
      bytes[whole.length - 3] = 1;
      assertNamed(bytes);
    }
  }

  @Test
  void aVersionOfNothingIsNoDamage() throws IOException {
    byte[] bytes = Files.readAllBytes(SAMPLE);
    assertThat(new String(bytes, 6, 4, StandardCharsets.ISO_8859_1)).isEqualTo("JFIF");
    bytes[11] = 0;
    assertThat(refusal(bytes)).isNull();
    bytes[11] = 3;
    assertNamed(bytes);
  }

  @Test
  void aZeroedSectorIsNamed() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    for (int sector = 2; (sector + 2) * 512 < whole.length; sector++) {
      byte[] bytes = whole.clone();
      Arrays.fill(bytes, sector * 512, (sector + 1) * 512, (byte) 0);
      assertNamed(bytes);
    }
  }

  @Test
  void mostLostPiecesAreNamed() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    Random random = new Random(11);
    int named = 0;
    for (int i = 0; i < 60; i++) {
      int at = 1000 + random.nextInt(whole.length - 2000);
      int length = 1 + random.nextInt(300);
      byte[] bytes = Arrays.copyOf(whole, whole.length - length);
      System.arraycopy(whole, at + length, bytes, at, bytes.length - at);
      named += refusal(bytes) == null ? 0 : 1;
    }
    assertThat(named).isGreaterThanOrEqualTo(54);
  }

  /** One bit in the coded difference of a block's brightness; the count of blocks stays right. */
  @Test
  void aShiftOfBrightnessThatKeepsTheCountOfBlocksIsNamed() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    Random random = new Random(23);
    int seams = 0;
    for (int i = 0; i < 400; i++) {
      byte[] bytes = whole.clone();
      bytes[700 + random.nextInt(bytes.length - 800)] ^= (byte) (1 << random.nextInt(8));
      UserError error = refusal(bytes);
      seams += error != null && error.getMessage().contains("brighter or darker") ? 1 : 0;
    }
    assertThat(seams).isGreaterThan(8);
    assertThat(Frame.live()).isZero();
  }

  /** Both border rows of plain solder mask, which shows nothing but noise: by 24 and 17 levels. */
  @ParameterizedTest
  @CsvSource({"logger-sensor-open.jpg, 20046, 16", "logger-display-bridge.jpg, 1917, 32"})
  void aShiftOfBrightnessAcrossPlainMaskIsNamed(String sample, int at, int bit) throws IOException {
    byte[] bytes = Files.readAllBytes(Path.of("sample-images", sample));
    bytes[at] ^= (byte) bit;
    assertThat(refusal(bytes)).hasMessageContaining("brighter or darker");
  }

  /** A stair of one unit between two areas without noise, as only a drawing has it. */
  @Test
  void drawnAreasThatMeetInAStairAreNoSeam() throws IOException {
    BufferedImage drawn = new BufferedImage(320, 160, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = drawn.createGraphics();
    pen.setColor(new Color(120, 120, 120));
    pen.fillRect(0, 80, 160, 80);
    pen.fillRect(160, 64, 160, 96);
    pen.dispose();
    Path file = folder.resolve("drawn.jpg");
    ImageIO.write(drawn, "jpg", file.toFile());
    try (Photo photo = reader.read(file)) {
      assertThat(photo.frame().widthPx()).isEqualTo(320);
    }
  }

  private void assertNamed(byte[] bytes) throws IOException {
    assertThat(refusal(bytes)).isNotNull().hasMessageContaining("copy it again");
  }

  private UserError refusal(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("altered.jpg"), bytes);
    return catchThrowableOfType(UserError.class, () -> reader.read(file).close());
  }
}
