package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.PhotoInfo;
import leadlight.photo.limit.Limit;
import leadlight.photo.limit.PhotoLimits;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoReaderTest {

  /** JPEG at quality 95 moves a pixel by about a grey level. */
  private static final double JPEG_LEVELS = 2;

  private final PhotoReader reader = new PhotoReader();

  @TempDir Path folder;

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyOrientationComesOutUpright(int n) throws IOException {
    // Outside reference: ImageMagick 6.9.11 -auto-orient (upright-N.png).
    byte[] upright = Samples.rgb("upright-" + n + ".png");
    try (Photo tiff = reader.read(Samples.path("orientation-" + n + ".tif"));
        Photo jpeg = reader.read(Samples.path("orientation-" + n + ".jpg"))) {
      assertThat(tiff.frame().rgb()).isEqualTo(upright);
      assertThat(Samples.meanDifference(jpeg.frame().rgb(), upright)).isLessThan(JPEG_LEVELS);
      assertThat(jpeg.info().exifOrientation()).isEqualTo(n);
      assertThat(tiff.info().exifOrientation()).isEqualTo(n);
      assertThat(jpeg.info().widthPx()).isEqualTo(n < 5 ? 48 : 32);
      assertThat(tiff.info().heightPx()).isEqualTo(n < 5 ? 32 : 48);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "webp"})
  void orientationIsReadFromPngAndWebpToo(String kind) throws IOException {
    try (Photo photo = reader.read(Samples.path("orientation-6." + kind))) {
      assertThat(photo.frame().rgb()).isEqualTo(Samples.rgb("upright-6.png"));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "base.png, png",
    "base.bmp, bmp",
    "lossless.webp, webp",
    "alpha.png, png",
    "orientation-1.tif, tiff"
  })
  void losslessKindsKeepEveryPixel(String name, String format) throws IOException {
    try (Photo photo = reader.read(Samples.path(name))) {
      assertThat(photo.frame().rgb()).isEqualTo(Samples.rgb("base.png"));
      assertThat(photo.info().format()).isEqualTo(format);
      assertThat(photo.info().bitsPerChannel()).isEqualTo(8);
      assertThat(photo.notes()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"progressive.jpg, 2", "lossy.webp, 6", "palette.png, 8"})
  void lossyKindsStayClose(String name, double levels) throws IOException {
    try (Photo photo = reader.read(Samples.path(name))) {
      assertThat(Samples.meanDifference(photo.frame().rgb(), Samples.rgb("base.png")))
          .isLessThan(levels);
    }
  }

  @Test
  void greyBecomesThreeEqualChannels() {
    try (Photo photo = reader.read(Samples.path("grey.jpg"))) {
      byte[] rgb = photo.frame().rgb();
      for (int i = 0; i < rgb.length; i += 3) {
        assertThat(rgb[i + 1]).isEqualTo(rgb[i]);
        assertThat(rgb[i + 2]).isEqualTo(rgb[i]);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sixteen-bits.png", "sixteen-bits.tif"})
  void sixteenBitsAreDividedNotClipped(String name) throws IOException {
    try (Photo photo = reader.read(Samples.path(name))) {
      assertThat(photo.frame().rgb()).isEqualTo(Samples.rgb("base.png"));
      assertThat(photo.info().bitsPerChannel()).isEqualTo(16);
      assertThat(photo.notes()).isEmpty();
    }
  }

  @Test
  void twelveBitsInSixteenAreStretchedWithANote() throws IOException {
    try (Photo photo = reader.read(Samples.path("twelve-of-sixteen-bits.png"))) {
      assertThat(photo.frame().rgb()).isEqualTo(Samples.rgb("base.png"));
      assertThat(photo.notes()).containsExactly(new NoteOfPhoto.FewBits(12));
    }
  }

  @Test
  void infoHoldsNameHashAndSize() throws IOException {
    Path file = folder.resolve("Kanal 3 – Öse 水.jpg");
    Files.copy(Samples.path("time-offset.jpg"), file);
    try (Photo photo = reader.read(file)) {
      PhotoInfo info = photo.info();
      assertThat(info.file()).isEqualTo("Kanal 3 – Öse 水.jpg");
      assertThat(info.widthPx()).isEqualTo(48);
      assertThat(info.heightPx()).isEqualTo(32);
      assertThat(info.takenAt()).contains("2026-03-01T09:05:07.042+05:30");
    }
  }

  @Test
  void theHashIsThatOfTheFile() {
    // Outside reference: sha256sum (coreutils 9.1) of base.bmp.
    try (Photo photo = reader.read(Samples.path("base.bmp"))) {
      assertThat(photo.info().sha256())
          .isEqualTo("dcc6f761c36e220bd4491112ce16fe9fbd028588e5709d1ed0f7e2658a60bb6c");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "time-local.jpg, 2026-03-01T09:05:00",
    "time-unknown.jpg,",
    "time-changed-only.jpg,",
    "base.png,"
  })
  void captureTimeIsWhatTheFileSaysAndNothingElse(String name, String time) {
    try (Photo photo = reader.read(Samples.path(name))) {
      assertThat(photo.info().takenAt().orElse(null)).isEqualTo(time);
    }
  }

  @Test
  void furtherPagesAreNamedInANote() throws IOException {
    try (Photo photo = reader.read(Samples.path("two-pages.tif"))) {
      assertThat(photo.frame().rgb()).isEqualTo(Samples.rgb("base.png"));
      assertThat(photo.notes()).containsExactly(new NoteOfPhoto.FirstPageOnly(2));
    }
  }

  @Test
  void aWrongExtensionIsReadAndNamedInANote() throws IOException {
    Path file = folder.resolve("row.png");
    Files.copy(Samples.path("grey.jpg"), file);
    try (Photo photo = reader.read(file)) {
      assertThat(photo.info().format()).isEqualTo("jpeg");
      assertThat(photo.notes()).containsExactly(new NoteOfPhoto.OtherFormat("JPEG"));
    }
  }

  @Test
  void whatFollowsTheEndOfAJpegDoesNotMatter() throws IOException {
    Path file = folder.resolve("phone.jpg");
    byte[] one = Samples.bytes("orientation-1.jpg");
    byte[] two = Arrays.copyOf(one, 2 * one.length - 100);
    System.arraycopy(one, 0, two, one.length, one.length - 100);
    Files.write(file, two);
    try (Photo photo = reader.read(file)) {
      assertThat(Samples.meanDifference(photo.frame().rgb(), Samples.rgb("base.png")))
          .isCloseTo(0, within(JPEG_LEVELS));
    }
  }

  @Test
  void aVeryLargePictureIsReadAtHalfSizeWithANote() throws IOException {
    // 48 x 32 px stand for a very large picture: limits are set to 0.001 megapixels in full.
    PhotoLimits.Intake own =
        new PhotoLimits.Intake(limit(1), limit(1), limit(0.001), limit(100), limit(1), limit(1));
    PhotoReader small =
        new PhotoReader(
            new PhotoLimits(
                own,
                PhotoLimits.standard().cost(),
                PhotoLimits.standard().whole(),
                PhotoLimits.standard().directories(),
                PhotoLimits.standard().fitness()));
    for (String name : new String[] {"orientation-6.jpg", "orientation-6.png"}) {
      try (Photo photo = small.read(Samples.path(name))) {
        assertThat(photo.info().widthPx()).isEqualTo(16);
        assertThat(photo.info().heightPx()).isEqualTo(24);
        assertThat(photo.notes()).containsExactly(new NoteOfPhoto.HalfSize());
      }
    }
  }

  private static Limit limit(double value) {
    return new Limit(value, "this test");
  }
}
