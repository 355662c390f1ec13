package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.model.UserError;
import leadlight.photo.header.Exif;
import leadlight.photo.header.Header;
import leadlight.photo.header.Source;
import leadlight.photo.limit.PhotoLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken in and what is not, by sizes alone; limits of models/photo/limits.json. */
class IntakeCheckTest {

  private static final IntakeCheck CHECK = new IntakeCheck(PhotoLimits.standard().intake());

  @TempDir private Path folder;

  private static Header header(String format, int width, int height, int bits) {
    return new Header(format, width, height, bits, Exif.NONE, List.of());
  }

  /** A file of a size, of which nothing but holes lies on the disk. */
  private Source file(long bytes) throws IOException {
    Path path = folder.resolve("f" + bytes);
    try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw")) {
      file.setLength(bytes);
    }
    return Source.open(path);
  }

  /** 16 px to 32,766 px a side, 120 megapixels. */
  @ParameterizedTest
  @CsvSource({
    "16,16,true",
    "15,16,false",
    "16,15,false",
    "32766,100,true",
    "32767,100,false",
    "100,32767,false",
    "12000,10000,true",
    "12000,10001,false"
  })
  void sizesOfPictures(int width, int height, boolean taken) throws IOException {
    try (Source source = file(1000)) {
      Header header = header("jpeg", width, height, 8);
      if (taken) {
        assertThatCode(() -> CHECK.picture(source, header)).doesNotThrowAnyException();
      } else {
        assertThatThrownBy(() -> CHECK.picture(source, header))
            .isInstanceOf(UserError.class)
            .hasMessageContaining(width + " x " + height);
      }
    }
  }

  /** 600 MB. */
  @ParameterizedTest
  @CsvSource({"600000000,true", "600000001,false"})
  void sizesOfFiles(long bytes, boolean taken) throws IOException {
    try (Source source = file(bytes)) {
      if (taken) {
        assertThatCode(() -> CHECK.file(source)).doesNotThrowAnyException();
      } else {
        assertThatThrownBy(() -> CHECK.file(source)).isInstanceOf(UserError.class);
      }
    }
  }

  /**
   * 800 MB for file and picture: three channels of a byte or two a pixel; a JPEG above 64
   * megapixels is halved on the way, a quarter of it is held.
   */
  @ParameterizedTest
  @CsvSource({
    "png,10000,10000,8,500000000,true",
    "png,10000,10000,8,500000001,false",
    "tiff,10000,10000,16,200000000,true",
    "tiff,10000,10000,16,200000001,false",
    "jpeg,10000,10000,8,500000001,true",
    "jpeg,12000,10000,8,600000000,true",
    "jpeg,8000,8000,8,608000000,true",
    "jpeg,8000,8000,8,608000001,false"
  })
  void memoryThatAPictureNeeds(
      String format, int width, int height, int bits, long bytes, boolean taken)
      throws IOException {
    try (Source source = file(bytes)) {
      Header header = header(format, width, height, bits);
      if (taken) {
        assertThatCode(() -> CHECK.picture(source, header)).doesNotThrowAnyException();
      } else {
        assertThatThrownBy(() -> CHECK.picture(source, header))
            .isInstanceOf(UserError.class)
            .hasMessageContaining("needs 800 MB");
      }
    }
  }

  /** 64 megapixels. */
  @ParameterizedTest
  @CsvSource({"8000,8000,false", "8000,8001,true"})
  void whatIsLookedAtInHalfSize(int width, int height, boolean half) {
    assertThat(CHECK.half(header("jpeg", width, height, 8))).isEqualTo(half);
  }

  /** BITMAPFILEHEADER and BITMAPINFOHEADER, by Microsoft's documentation; 24 bits a pixel. */
  private Path bmp(int width, int height, int headSize, int compression, int missing)
      throws IOException {
    int stride = (width * 24 + 31) / 32 * 4;
    int offset = 14 + headSize;
    ByteBuffer bytes =
        ByteBuffer.allocate(offset + stride * Math.abs(height)).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put(0, (byte) 'B').put(1, (byte) 'M').putInt(10, offset).putInt(14, headSize);
    if (headSize == 12) {
      bytes.putShort(18, (short) width).putShort(20, (short) height);
      bytes.putShort(22, (short) 1).putShort(24, (short) 24);
    } else {
      bytes.putInt(18, width).putInt(22, height).putShort(26, (short) 1).putShort(28, (short) 24);
      bytes.putInt(30, compression);
    }
    byte[] all = bytes.array();
    Path file = folder.resolve("p.bmp");
    return Files.write(file, java.util.Arrays.copyOf(all, all.length - missing));
  }

  @ParameterizedTest
  @CsvSource({
    "33,20,40,0,0,true",
    "33,-20,40,0,0,true",
    "33,20,12,0,0,true",
    "33,20,124,0,0,true",
    "33,20,40,0,1,false",
    "33,20,12,0,1,false",
    "33,20,40,3,0,true",
    "33,20,40,3,1,false"
  })
  void aBmpIsAsLongAsItsHeaderSays(
      int width, int height, int headSize, int compression, int missing, boolean whole)
      throws IOException {
    Path file = bmp(width, height, headSize, compression, missing);
    try (Source source = Source.open(file)) {
      if (whole) {
        Header header = Header.of(source);
        assertThat(header.format()).isEqualTo("bmp");
        assertThat(header.widthPx()).isEqualTo(width);
        assertThat(header.heightPx()).isEqualTo(Math.abs(height));
      } else {
        assertThatThrownBy(() -> Header.of(source))
            .isInstanceOf(UserError.class)
            .hasMessageContaining("cut short");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"11", "125"})
  void aBmpOfAnUnknownHeaderIsNone(int headSize) throws IOException {
    try (Source source = Source.open(bmp(33, 20, headSize, 0, 0))) {
      assertThatThrownBy(() -> Header.of(source)).isInstanceOf(UserError.class);
    }
  }

  @Test
  void anEmptyFileIsClosedAndRefused() throws IOException {
    Path empty = Files.createFile(folder.resolve("empty.jpg"));
    assertThatThrownBy(() -> Source.open(empty))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("empty");
  }
}
