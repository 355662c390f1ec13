package leadlight.photo.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import leadlight.photo.jpeg.JpegWalk;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Damage that leaves every code whole: units of a picture lost, doubled, exchanged. Where the count
 * of blocks stays right, brightness steps; that what is shown also moves sideways is not looked at
 * (docs/trust.md).
 */
class InStepDamageTest {

  private static final int TRIES = 40;

  private static CodedUnits coded;

  private final Random random = new Random(5);

  @BeforeAll
  static void read() throws IOException {
    coded =
        new CodedUnits(
            Files.readAllBytes(Path.of("sample-images", "base-station-video-mixed.jpg")));
    assertThat(coded.isWhole()).isTrue();
  }

  @Test
  void aUnitLostOrDoubledIsNamedByTheCount() {
    for (int i = 0; i < TRIES; i++) {
      List<Integer> units = coded.all();
      int unit = random.nextInt(units.size());
      units.add(unit, unit);
      assertThat(damage(units)).isPresent();
      units.remove(unit);
      units.remove(unit);
      assertThat(damage(units)).isPresent();
    }
  }

  /** Two units in each other's place: both are garbled, and all between is brighter or darker. */
  @Test
  void mostExchangedUnitsAreNamed() {
    int named = 0;
    for (int i = 0; i < TRIES; i++) {
      List<Integer> units = coded.all();
      Collections.swap(units, random.nextInt(units.size()), random.nextInt(units.size()));
      named += damage(units).isPresent() ? 1 : 0;
    }
    assertThat(named).isGreaterThanOrEqualTo(24);
  }

  private static Optional<String> damage(List<Integer> units) {
    byte[] file = coded.with(units);
    return JpegWalk.at(
            (at, into) -> {
              int length = (int) Math.max(0, Math.min(into.length, file.length - at));
              System.arraycopy(file, (int) Math.min(at, file.length), into, 0, length);
              return length;
            },
            PhotoLimits.standard().whole().jpeg())
        .damage();
  }
}
