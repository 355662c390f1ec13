package leadlight.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import leadlight.model.picture.Plane;
import org.junit.jupiter.api.Test;

class FocusTest {

  private static Plane stripes(int softened) {
    float[] data = new float[60 * 40];
    for (int i = 0; i < data.length; i++) {
      data[i] = i % 60 / 6 % 2 == 0 ? 50 : 200;
    }
    Plane plane = new Plane(60, 40, data);
    for (int k = 0; k < softened; k++) {
      plane = Focus.softer(plane);
    }
    return plane;
  }

  private static float[] filled(float value) {
    float[] data = new float[25];
    Arrays.fill(data, value);
    return data;
  }

  @Test
  void theSharperOfTwoIsSoftenedUntilBothAreAlike() {
    Focus.Pair pair = Focus.alike(stripes(0), stripes(9), i -> true, RegisterTuning.builtIn());
    assertThat(pair.b().data()).isEqualTo(stripes(9).data());
    assertThat(Focus.ratio(pair.a(), pair.b(), i -> true)).isCloseTo(1, within(0.1));
  }

  @Test
  void picturesOfOneFocusAreLeftAlone() {
    Focus.Pair pair = Focus.alike(stripes(2), stripes(2), i -> true, RegisterTuning.builtIn());
    assertThat(pair.a().data()).isEqualTo(stripes(2).data());
  }

  @Test
  void whatIsFlatStaysFlat() {
    Plane flat = new Plane(5, 5, filled(7));
    assertThat(Focus.softer(flat).data()).containsOnly(7);
  }
}
