package leadlight.photo.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.photo.Samples;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BadFileTest {

  private final PhotoReader reader = new PhotoReader();

  @TempDir Path folder;

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @Test
  void aMissingFileIsNamed() {
    assertRefused(folder.resolve("none.jpg"), "does not exist; check the path");
  }

  @Test
  void aFolderIsNotAFile() {
    assertRefused(folder, "is a folder; name a picture file in it");
  }

  @Test
  void aFileThatMayNotBeReadIsNamed() throws IOException {
    Path file = write("locked.jpg", Samples.bytes("grey.jpg"));
    assumeFalse(System.getProperty("os.name").startsWith("Windows"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(file), "this user may read everything");
    assertRefused(file, "may not be read");
  }

  @Test
  void anEmptyFileIsNamed() throws IOException {
    assertRefused(write("zero.jpg", new byte[0]), "is empty, 0 bytes");
  }

  @ParameterizedTest
  @CsvSource({
    "moving.gif, GIF", "moving.png, moving picture", "moving.webp, moving picture",
    "cmyk.jpg, CMYK", "cmyk.tif, CMYK", "float.tif, 8 or 16 bits"
  })
  void whatCannotBeScoredIsNamedWithWhatToSave(String name, String what) {
    assertRefused(Samples.path(name), what);
    assertRefused(Samples.path(name), "save");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"orientation-1.jpg", "progressive.jpg", "base.png", "base.bmp", "lossless.webp"})
  void aFileCutAnywhereIsRefused(String name) throws IOException {
    byte[] whole = Samples.bytes(name);
    for (int kept = 40; kept < whole.length; kept += 37) {
      assertRefused(write("cut-" + name, Arrays.copyOf(whole, kept)), "copy it again");
    }
    assertRefused(write("cut-" + name, Arrays.copyOf(whole, whole.length - 1)), "copy it again");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sixteen-bits.tif", "orientation-1.tif"})
  void ofACutTiffNoPixelIsLostUnnoticed(String name) throws IOException {
    // Resolution and remarks may stand behind the pixels; a file that lost only those is whole.
    byte[] whole = Samples.bytes(name);
    byte[] rgb = Samples.rgb("base.png");
    int read = 0;
    int tried = 0;
    for (int kept = 40; kept < whole.length; kept += 9) {
      tried++;
      try (Photo photo = reader.read(write("cut.tif", Arrays.copyOf(whole, kept)))) {
        assertThat(photo.frame().rgb()).as("cut to " + kept).isEqualTo(rgb);
        read++;
      } catch (UserError e) {
        assertThat(e).hasMessageContaining("copy it again");
      }
    }
    assertThat(read).isLessThan(tried / 5);
  }

  @Test
  void aJpegWhosePictureEndsEarlyBehindAFairHeaderIsRefused() throws IOException {
    byte[] whole = Samples.bytes("orientation-1.jpg");
    int kept = indexOf(whole, 0xda) + 40;
    byte[] cut = Arrays.copyOf(whole, kept + 2);
    cut[kept] = (byte) 0xff;
    cut[kept + 1] = (byte) 0xd9;
    assertRefused(write("early.jpg", cut), "data end early");
  }

  @Test
  void aDamagedPngIsRefused() throws IOException {
    byte[] bytes = Samples.bytes("base.png");
    bytes[bytes.length / 2] ^= 0x55;
    assertRefused(write("damaged.png", bytes), "is damaged");
  }

  @Test
  void aTextFileIsNamed() throws IOException {
    byte[] text = "pin 7 looked open\n".getBytes(StandardCharsets.US_ASCII);
    assertRefused(write("notes.jpg", text), "is a text file, not a picture");
  }

  @Test
  void randomBytesAreNoPicture() throws IOException {
    byte[] bytes = new byte[4096];
    new Random(7).nextBytes(bytes);
    assertRefused(write("noise.jpg", bytes), "is not a picture");
  }

  @ParameterizedTest
  @CsvSource({
    "ftypheic, HEIC",
    "ftypmif1, HEIC",
    "ftypavif, AVIF",
    "'ftypcrx ', raw camera file",
    "ftypisom, video"
  })
  void phoneFormatsAreNamed(String mark, String what) throws IOException {
    byte[] bytes = new byte[64];
    System.arraycopy(mark.getBytes(StandardCharsets.US_ASCII), 0, bytes, 4, mark.length());
    assertRefused(write("phone.jpg", bytes), what);
  }

  @Test
  void rawCameraFilesBuiltLikeTiffAreNamed() throws IOException {
    ByteBuffer raw = ByteBuffer.allocate(64).order(ByteOrder.LITTLE_ENDIAN);
    raw.put(new byte[] {'I', 'I', '*', 0}).putInt(16).put(new byte[] {'C', 'R', 2, 0});
    raw.position(16).putShort((short) 1);
    raw.putShort((short) 0x100).putShort((short) 4).putInt(1).putInt(6000);
    assertRefused(write("raw.tif", raw.array()), "raw camera file");
  }

  @Test
  void aPngThatClaimsAnAbsurdSizeIsRefusedBeforeMemoryIsTaken() throws IOException {
    ByteBuffer png = ByteBuffer.wrap(Samples.bytes("base.png"));
    png.putInt(16, 100_000).putInt(20, 100_000);
    CRC32 crc = new CRC32();
    crc.update(png.array(), 12, 17);
    png.putInt(29, (int) crc.getValue());
    assertRefused(write("huge.png", png.array()), "claims 100000 x 100000 px");
  }

  @Test
  void aJpegThatClaimsAnAbsurdSizeIsRefused() throws IOException {
    assertRefused(write("huge.jpg", jpegOfClaimedSize(65_500, 65_500)), "claims 65500 x 65500 px");
  }

  @Test
  void aBmpThatClaimsAnAbsurdSizeIsRefused() throws IOException {
    ByteBuffer bmp = ByteBuffer.wrap(Samples.bytes("base.bmp")).order(ByteOrder.LITTLE_ENDIAN);
    bmp.putInt(18, 2_000_000_000).putInt(22, 2_000_000_000);
    assertRefused(write("huge.bmp", bmp.array()), "is cut short");
  }

  @Test
  void aJpegThatClaimsMoreThanItHoldsIsRefused() throws IOException {
    assertRefused(write("lies.jpg", jpegOfClaimedSize(48, 320)), "data end early");
  }

  @Test
  void aPictureTooSmallForARowIsRefused() throws IOException {
    assertRefused(write("small.jpg", jpegOfClaimedSize(48, 8)), "too small to show a row");
  }

  @Test
  void aFileBeyondTheSizeLimitIsNotRead() {
    Limit one = new Limit(1, "this test");
    Limit tiny = new Limit(0.0001, "this test");
    PhotoReader small =
        new PhotoReader(
            new PhotoLimits(
                new PhotoLimits.Intake(tiny, one, one, one, one, one),
                PhotoLimits.standard().cost(),
                PhotoLimits.standard().whole(),
                PhotoLimits.standard().directories(),
                PhotoLimits.standard().fitness()));
    assertThat(catchThrowableOfType(UserError.class, () -> small.read(Samples.path("base.bmp"))))
        .hasMessageContaining("crop the row out");
  }

  private static byte[] jpegOfClaimedSize(int width, int height) throws IOException {
    byte[] jpeg = Samples.bytes("orientation-1.jpg");
    int frame = indexOf(jpeg, 0xc0);
    ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) height).putShort(frame + 7, (short) width);
    return jpeg;
  }

  private static int indexOf(byte[] jpeg, int marker) {
    int i = 0;
    while ((jpeg[i] & 0xff) != 0xff || (jpeg[i + 1] & 0xff) != marker) {
      i++;
    }
    return i;
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  /** One line that starts with the path, holds {@code what}, and says what to do. */
  private void assertRefused(Path file, String what) {
    UserError error =
        catchThrowableOfType(
            UserError.class,
            () -> {
              try (Photo photo = reader.read(file)) {
                assertThat(photo.info()).as("should have been refused").isNull();
              }
            });
    assertThat(error).as(file + " is refused").isNotNull();
    assertThat(error.getMessage()).startsWith(file + " ").contains(what).containsPattern("[;:,] ");
    assertThat(error.getMessage().lines()).hasSize(1);
  }
}
