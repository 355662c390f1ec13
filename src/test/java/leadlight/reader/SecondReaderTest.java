package leadlight.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import leadlight.data.DataFile;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.Reading;
import leadlight.model.Region;
import leadlight.model.RowOutcome;
import leadlight.model.RowPictures;
import leadlight.model.RowSpec;
import leadlight.model.Settings;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.vision.Threads;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SecondReaderTest {

  /** From another renderer than the one that the reader learned from. */
  private static final Path OPEN = Path.of("sample-images/logger-sensor-open.jpg");

  private static final Set<Integer> UNWETTED = Set.of(1, 11, 12);
  private static final int OPEN_PIN = 12;

  @AfterEach
  void asManyThreadsAsUsual() {
    Threads.set(Runtime.getRuntime().availableProcessors());
  }

  private static RowPictures sample() {
    RowSpec row = RowSpec.plain(20, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    Settings settings = new Settings(row, 2, limits.id(), Optional.empty(), Opinions.MEASURES);
    PhotoScorer scorer = new PhotoScorer(settings, limits);
    try (Photo photo = new PhotoReader().read(OPEN)) {
      return scorer.pictures(photo, (RowOutcome.Found) scorer.score(photo).row());
    }
  }

  @Test
  void theSamePicturesGiveTheSameReadingOnAnyNumberOfThreads() {
    RowPictures row = sample();
    Threads.set(1);
    List<Reading> onOne = SecondReader.builtIn().read(row);
    Threads.set(2);

    assertThat(SecondReader.builtIn().read(row)).isEqualTo(onOne);
  }

  @Test
  void aReadingDoesNotDependOnTheJointsReadBesideIt() {
    RowPictures row = sample();
    RowPictures alone =
        new RowPictures(
            row.width(),
            row.height(),
            row.xFromPitch(),
            row.yFromPitch(),
            row.pixelsPerPitch(),
            List.of(row.joints().get(3)),
            row.typical());

    Reading byItself = SecondReader.builtIn().read(alone).get(0);
    Reading amongOthers = SecondReader.builtIn().read(row).get(3);
    assertThat(byItself.strangeness()).isEqualTo(amongOthers.strangeness());
    assertThat(byItself.chances().of(Question.UNWETTED))
        .isEqualTo(amongOthers.chances().of(Question.UNWETTED));
  }

  @Test
  void bothJointsOfAGapHaveItsOneChance() {
    List<Reading> readings = SecondReader.builtIn().read(sample());

    for (int i = 1; i < readings.size(); i++) {
      assertThat(readings.get(i).chances().of(Question.BRIDGE_BEFORE))
          .isEqualTo(readings.get(i - 1).chances().of(Question.BRIDGE_AFTER));
    }
  }

  @Test
  void unwettedLeadsAreReadAsSuchAndTheWettedOnesAsSound() {
    List<Reading> readings = SecondReader.builtIn().read(sample());

    for (int pin = 1; pin <= readings.size(); pin++) {
      double unwetted = readings.get(pin - 1).chances().of(Question.UNWETTED);
      if (UNWETTED.contains(pin)) {
        assertThat(unwetted).as("pin %d", pin).isGreaterThan(0.9);
      } else {
        assertThat(unwetted).as("pin %d", pin).isLessThan(0.1);
      }
    }
  }

  @Test
  void aJointIsReadAloneWhateverItsRowLooksLike() {
    RowPictures row = sample();
    RowPictures allOpen =
        new RowPictures(
            row.width(),
            row.height(),
            row.xFromPitch(),
            row.yFromPitch(),
            row.pixelsPerPitch(),
            row.joints(),
            row.joints().get(OPEN_PIN - 1));

    assertThat(SecondReader.builtIn().read(allOpen).get(OPEN_PIN - 1).chances())
        .isEqualTo(SecondReader.builtIn().read(row).get(OPEN_PIN - 1).chances());
  }

  @Test
  void aPathTracedRowDoesNotLookPhotographed() {
    double mean =
        SecondReader.builtIn().read(sample()).stream()
            .mapToDouble(reading -> reading.photographed().orElseThrow())
            .average()
            .orElseThrow();
    assertThat(mean).isLessThan(0.5);
  }

  @Test
  void whatMovedTheReaderLiesWithinThePictureAndOnlyFaultsHaveIt() {
    RowPictures row = sample();
    List<Reading> readings = SecondReader.builtIn().read(row);

    Region moved = readings.get(OPEN_PIN - 1).moved().orElseThrow();
    assertThat(moved.x0()).isGreaterThanOrEqualTo(row.xFromPitch());
    assertThat(moved.y0()).isGreaterThanOrEqualTo(row.yFromPitch());
    assertThat(moved.x1()).isLessThanOrEqualTo(row.xFromPitch() + 2);
    assertThat(moved.y1()).isLessThanOrEqualTo(row.yFromPitch() + 4.25);
    assertThat(readings.get(4).moved()).isEmpty();
  }

  @Test
  void nearlyAllOfNoiseAndOfARowUpsideDownIsUnlikeKnownJoints() {
    RowPictures row = sample();
    Random random = new Random(5);
    List<byte[]> noise = new ArrayList<>();
    List<byte[]> turned = new ArrayList<>();
    for (byte[] joint : row.joints()) {
      byte[] grain = new byte[joint.length];
      random.nextBytes(grain);
      noise.add(grain);
      turned.add(upsideDown(joint, row.width(), row.height()));
    }

    assertThat(unlike(row, noise, noise.get(0))).isGreaterThanOrEqualTo(noise.size() - 1);
    assertThat(unlike(row, turned, upsideDown(row.typical(), row.width(), row.height())))
        .isGreaterThanOrEqualTo(turned.size() - 1);
    assertThat(unlike(row, row.joints(), row.typical())).isZero();
  }

  private static long unlike(RowPictures size, List<byte[]> joints, byte[] typical) {
    RowPictures row =
        new RowPictures(
            size.width(),
            size.height(),
            size.xFromPitch(),
            size.yFromPitch(),
            size.pixelsPerPitch(),
            joints,
            typical);
    return SecondReader.builtIn().read(row).stream().filter(Reading::unlike).count();
  }

  private static byte[] upsideDown(byte[] picture, int width, int height) {
    byte[] turned = new byte[picture.length];
    for (int plane = 0; plane < RowPictures.PLANES; plane++) {
      for (int y = 0; y < height; y++) {
        int from = (plane * height + y) * width;
        int to = (plane * height + height - 1 - y) * width;
        System.arraycopy(picture, from, turned, to, width);
      }
    }
    return turned;
  }

  @Test
  void anotherNetworkThanTheDescribedOneIsRefused() {
    byte[] onnx = DataFile.builtIn("reader/reader.onnx").bytes();
    onnx[onnx.length / 2] ^= 1;

    assertThatThrownBy(() -> new SecondReader(ReaderFile.builtIn(), onnx))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("reader.onnx");
  }

  @Test
  void theNetworkIsSmall() {
    assertThat(DataFile.builtIn("reader/reader.onnx").bytes()).hasSizeLessThan(3 << 20);
  }
}
