package leadlight.vision.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import leadlight.vision.Frame;
import leadlight.vision.decode.ApartDecoder.Way;
import leadlight.vision.decode.Codec.Decoded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ApartDecoderTest {

  private static final Path PHOTOS = Path.of("src/test/resources/photo");

  private final ApartDecoder decoder = new ApartDecoder(Duration.ofSeconds(60), 1000);

  @ParameterizedTest
  @CsvSource({
    "orientation-6.tif, FULL",
    "lossy.webp, FULL",
    "orientation-6.jpg, HALF",
    "sixteen-bits.tif, DEEP"
  })
  void givesThePixelsThatDecodingHereGives(String name, Way way) throws IOException {
    byte[] file = Files.readAllBytes(PHOTOS.resolve(name));
    try (EncodedPicture there = EncodedPicture.of(file);
        EncodedPicture here = EncodedPicture.of(file);
        Frame apart = decoder.decode(there, way).orElseThrow().frame();
        Frame beside = way.here(here).orElseThrow().frame()) {
      assertThat(apart.rgb()).isEqualTo(beside.rgb());
    }
  }

  @Test
  void whatIsNoPictureIsNone() {
    try (EncodedPicture picture = EncodedPicture.of(new byte[] {'I', 'I', '*', 0})) {
      assertThat(decoder.decode(picture, Way.FULL)).isEmpty();
    }
  }

  @Test
  void aDecoderThatHangsIsEndedAndTheNextPictureIsDecoded() throws IOException {
    byte[] file = Files.readAllBytes(PHOTOS.resolve("lossy.webp"));
    try (EncodedPicture picture = EncodedPicture.of(file)) {
      // No process starts within a millisecond, so this one is as good as hanging.
      ApartDecoder hasty = new ApartDecoder(Duration.ofMillis(1), 999);
      assertThatThrownBy(() -> decodedFresh(hasty, picture))
          .isInstanceOfSatisfying(
              ApartDecoder.Lost.class, lost -> assertThat(lost.late()).isTrue());
      Optional<Decoded> decoded = decoder.decode(picture, Way.FULL);
      assertThat(decoded).isPresent();
      decoded.get().frame().close();
    }
  }

  @Test
  void aDecoderWithoutMemoryCostsOnePicture() throws IOException {
    assumeFalse(System.getProperty("os.name").startsWith("Windows"));
    byte[] file = Files.readAllBytes(PHOTOS.resolve("lossy.webp"));
    try (EncodedPicture picture = EncodedPicture.of(file)) {
      ApartDecoder poor = new ApartDecoder(Duration.ofSeconds(60), 8);
      assertThatThrownBy(() -> decodedFresh(poor, picture))
          .isInstanceOfSatisfying(
              ApartDecoder.Lost.class, lost -> assertThat(lost.late()).isFalse());
    }
  }

  /** By a process of its own, not by one that other tests left idle. */
  private static void decodedFresh(ApartDecoder decoder, EncodedPicture picture) {
    ApartDecoder.forgetIdle();
    decoder.decode(picture, Way.FULL).ifPresent(it -> it.frame().close());
  }
}
