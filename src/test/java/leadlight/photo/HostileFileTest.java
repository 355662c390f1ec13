package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import leadlight.model.UserError;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that once cost gigabytes, minutes or the whole stack, or passed as black pictures. */
class HostileFileTest {

  private static final Duration SOON = Duration.ofSeconds(5);
  private static final int DIRECTORY_AT = 8;

  private final PhotoReader reader = new PhotoReader();

  @TempDir Path folder;

  @Test
  void aSecondHeaderThatHidesTheSizeOfTheFirstIsRefused() throws IOException {
    byte[] whole = Samples.bytes("orientation-1.jpg");
    int at = indexOf(whole, 0xc0);
    int length = 2 + ByteBuffer.wrap(whole).getShort(at + 2);
    byte[] first = Arrays.copyOfRange(whole, at, at + length);
    ByteBuffer.wrap(first).putShort(5, (short) 18_000).putShort(7, (short) 18_000);
    assertRefused(write(inserted(whole, at, first)), "two headers");
  }

  @Test
  void scansWithoutEndAreRefused() throws IOException {
    byte[] whole = Samples.bytes("progressive.jpg");
    int scan = indexOf(whole, 0xda);
    int next = scan + 2;
    while ((whole[next] & 0xff) != 0xff || whole[next + 1] == 0) {
      next++;
    }
    byte[] one = Arrays.copyOfRange(whole, scan, next);
    byte[] bytes = whole;
    for (int i = 0; i < 200; i++) {
      bytes = inserted(bytes, next, one);
    }
    assertRefused(write(bytes), "is damaged");
  }

  @Test
  void metadataThatPointToThemselvesOrNestDeeplyLoseOnlyTheMetadata() throws IOException {
    byte[] whole = Samples.bytes("orientation-1.jpg");
    for (boolean loop : new boolean[] {true, false}) {
      byte[] exif = exif(5000, loop);
      try (Photo photo = reader.read(write(inserted(whole, 2, exif)))) {
        assertThat(photo.info().takenAt()).isEmpty();
      }
    }
  }

  @Test
  void aBmpOfNoBitsOrPackedInRunsIsNoBlackPicture() throws IOException {
    ByteBuffer bmp = ByteBuffer.allocate(2054).order(ByteOrder.LITTLE_ENDIAN);
    bmp.put((byte) 'B').put((byte) 'M').putInt(2054).putInt(0).putInt(54);
    bmp.putInt(40).putInt(900).putInt(400).putShort((short) 1).putShort((short) 0);
    assertRefused(write(bmp.array()), "is damaged");
    bmp.putShort(28, (short) 8).putInt(30, 1);
    assertRefused(write(bmp.array()), "run-length");
  }

  @Test
  void aTiffWhoseDirectoriesRunInACircleIsRefused() throws IOException {
    ByteBuffer tiff = tiff(64, 64).putInt(DIRECTORY_AT + 2 + 12 * 5, DIRECTORY_AT);
    assertRefused(write(tiff.array()), "is damaged");
  }

  @Test
  void aTiffOfOtherPiecesThanItsSizeAsksForIsRefused() throws IOException {
    ByteBuffer tiff = tiff(64, 64);
    tiff.putInt(DIRECTORY_AT + 2 + 12 * 4 + 4, 32_769);
    assertRefused(write(tiff.array()), "is damaged");
  }

  @Test
  void aTiffThatClaimsMoreThanItsBytesCanHoldIsRefused() throws IOException {
    assertRefused(write(tiff(32_000, 20_000).array()), "more than its few bytes can hold");
  }

  /** Grey, one strip of 1000 bytes. */
  private static ByteBuffer tiff(int width, int height) {
    ByteBuffer tiff = ByteBuffer.allocate(1200).order(ByteOrder.LITTLE_ENDIAN);
    tiff.put(new byte[] {'I', 'I', '*', 0}).putInt(DIRECTORY_AT).putShort((short) 5);
    int[][] entries = {{0x100, width}, {0x101, height}, {0x103, 8}, {0x111, 100}, {0x117, 1000}};
    for (int[] entry : entries) {
      tiff.putShort((short) entry[0]).putShort((short) 4).putInt(1).putInt(entry[1]);
    }
    return tiff;
  }

  /** A block of metadata whose directories point to themselves, or each to the next. */
  private static byte[] exif(int directories, boolean loop) {
    int size = 2 + 12 + 4;
    int count = loop ? 1 : Math.min(directories, 60_000 / size);
    ByteBuffer block = ByteBuffer.allocate(4 + 6 + 8 + count * size);
    block.put(new byte[] {(byte) 0xff, (byte) 0xe1}).putShort((short) (block.capacity() - 2));
    block.put(new byte[] {'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, '*'}).putInt(8);
    for (int i = 0; i < count; i++) {
      int next = loop ? 8 : 8 + (i + 1) % count * size;
      block.putShort((short) 1).putShort((short) 0x8769).putShort((short) 4).putInt(1);
      block.putInt(next).putInt(next);
    }
    return block.array();
  }

  private static byte[] inserted(byte[] whole, int at, byte[] piece) {
    return ByteBuffer.allocate(whole.length + piece.length)
        .put(whole, 0, at)
        .put(piece)
        .put(whole, at, whole.length - at)
        .array();
  }

  private static int indexOf(byte[] jpeg, int marker) {
    int i = 0;
    while ((jpeg[i] & 0xff) != 0xff || (jpeg[i + 1] & 0xff) != marker) {
      i++;
    }
    return i;
  }

  private Path write(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("hostile"), bytes);
  }

  private void assertRefused(Path file, String what) {
    Assertions.assertTimeoutPreemptively(
        SOON,
        () ->
            assertThatThrownBy(() -> reader.read(file).close())
                .isInstanceOf(UserError.class)
                .hasMessageContaining(what));
  }
}
