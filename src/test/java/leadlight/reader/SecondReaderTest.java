package leadlight.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import leadlight.data.DataFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.picture.RowPictures;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.vision.Threads;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SecondReaderTest {

  /** From another renderer than the one that the reader learned from. */
  private static final Path OPEN = Path.of("sample-images/logger-sensor-open.jpg");

  private static final Set<Integer> UNWETTED = Set.of(1, 11, 12);
  private static final int OPEN_PIN = 12;

  @AfterEach
  void asManyThreadsAsUsual() {
    Threads.set(Runtime.getRuntime().availableProcessors());
  }

  private static List<Reading> read(RowPictures row) {
    return SecondReader.builtIn().read(row).joints();
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
    List<Reading> onOne = read(row);
    Threads.set(2);

    assertThat(read(row)).isEqualTo(onOne);
  }

  @Test
  void howUnlikeKnownJointsOneIsDoesNotDependOnThoseReadBesideIt() {
    RowPictures row = sample();

    Reading byItself = read(with(row, List.of(row.joints().get(3)), row.typical())).get(0);
    assertThat(byItself.strangeness()).isEqualTo(read(row).get(3).strangeness());
  }

  /** What a row shows together counts, not which joint lies where in it. */
  @Test
  void aChanceDoesNotDependOnTheOrderOfTheRow() {
    RowPictures row = sample();
    List<byte[]> turned = new ArrayList<>(row.joints());
    Collections.reverse(turned);

    assertThat(
            read(with(row, turned, row.typical()))
                .get(turned.size() - 4)
                .chances()
                .of(Question.UNWETTED))
        .isCloseTo(read(row).get(3).chances().of(Question.UNWETTED), within(1e-4));
  }

  private static RowPictures with(RowPictures row, List<byte[]> joints, byte[] typical) {
    return new RowPictures(
        row.width(),
        row.height(),
        row.xFromPitch(),
        row.yFromPitch(),
        row.pixelsPerPitch(),
        joints,
        typical);
  }

  @Test
  void bothJointsOfAGapHaveItsOneChance() {
    List<Reading> readings = read(sample());

    for (int i = 1; i < readings.size(); i++) {
      assertThat(readings.get(i).chances().of(Question.BRIDGE_BEFORE))
          .isEqualTo(readings.get(i - 1).chances().of(Question.BRIDGE_AFTER));
    }
  }

  @Test
  void unwettedLeadsAreReadAsSuchAndTheWettedOnesAsSound() {
    List<Reading> readings = read(sample());

    for (int pin = 1; pin <= readings.size(); pin++) {
      double unwetted = readings.get(pin - 1).chances().of(Question.UNWETTED);
      if (UNWETTED.contains(pin)) {
        assertThat(unwetted).as("pin %d", pin).isGreaterThan(0.9);
      } else {
        assertThat(unwetted).as("pin %d", pin).isLessThan(0.1);
      }
    }
  }

  /** All joints open alike: each is its row's typical joint, and that proves nothing. */
  @Test
  void aRowThatIsOpenThroughoutIsReadAsOpenThroughout() {
    RowPictures row = sample();
    byte[] open = row.joints().get(OPEN_PIN - 1);
    List<byte[]> all = Collections.nCopies(row.joints().size(), open);

    assertThat(read(with(row, all, open)))
        .allMatch(reading -> reading.chances().of(Question.UNWETTED) > 0.9);
  }

  @Test
  void aPathTracedRowIsFamiliar() {
    assertThat(SecondReader.builtIn().read(sample()).unfamiliar()).isLessThan(0.1);
  }

  @Test
  void whatMovedTheReaderLiesWithinThePictureAndOnlyFaultsHaveIt() {
    RowPictures row = sample();
    List<Reading> readings = read(row);

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
    RowPictures row = with(size, joints, typical);
    return read(row).stream().filter(Reading::unlike).count();
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

  @ParameterizedTest
  @ValueSource(strings = {ReaderFile.ALONE, ReaderFile.IN_ROW, ReaderFile.BESIDE})
  void anotherNetworkThanTheDescribedOneIsRefused(String name) {
    byte[] onnx = DataFile.builtInBytes("reader/" + name + ".onnx");
    onnx[onnx.length / 2] ^= 1;

    assertThatThrownBy(() -> new ReadingNet(ReaderFile.builtIn(name), onnx))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("models/reader");
  }

  @ParameterizedTest
  @ValueSource(strings = {ReaderFile.ALONE, ReaderFile.IN_ROW, ReaderFile.BESIDE})
  void theNetworksAreSmall(String name) {
    assertThat(DataFile.builtInBytes("reader/" + name + ".onnx")).hasSizeLessThan(4 << 20);
  }
}
