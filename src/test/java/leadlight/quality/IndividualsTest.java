package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import leadlight.quality.chart.Individuals;
import org.junit.jupiter.api.Test;

/** A chart of single values by their moving range. */
class IndividualsTest {

  private static Individuals of(boolean highOnly, Double... values) {
    return Individuals.of(
        "shade", Collections.nCopies(values.length, "day"), List.of(values), 4, highOnly);
  }

  /** Moving ranges 1, 2 and 3: mean 2; d2 of two values is 1.128. */
  @Test
  void limitsComeFromTheMovingRangeOfTheBaseline() {
    Individuals.Limits limits = of(false, 10.0, 11.0, 9.0, 12.0, 50.0).limits().orElseThrow();
    assertThat(limits.centre()).isCloseTo(10.5, within(1e-9));
    assertThat(limits.sigma()).isCloseTo(2.0 / 1.128, within(1e-9));
    assertThat(limits.upper()).isCloseTo(10.5 + 6 / 1.128, within(1e-9));
  }

  @Test
  void aValueBeyondTheLimitIsASignalNowAndLowOnesOnlyWhereTheyMatter() {
    assertThat(of(true, 10.0, 11.0, 9.0, 12.0, 30.0).since(4))
        .containsExactly("a point beyond three sigma at day");
    assertThat(of(true, 10.0, 11.0, 9.0, 12.0, -30.0).since(4)).isEmpty();
    assertThat(of(false, 10.0, 11.0, 9.0, 12.0, -30.0).since(4)).isNotEmpty();
    assertThat(of(false, 10.0, 11.0, 9.0, 12.0, 30.0, 10.0).since(5)).isEmpty();
    assertThat(of(false, 10.0, 11.0, 9.0, 12.0, 30.0, 10.0).since(4)).isNotEmpty();
  }

  @Test
  void aBaselineThatIsNotWholeSetsNoLimits() {
    assertThat(of(false, 10.0, 11.0, 90.0).limits()).isEmpty();
  }

  /** As of a level that is clipped on all the first days. */
  @Test
  void whereTheBaselineDoesNotVaryAnyOtherValueIsASignal() {
    assertThat(of(false, 0.1, 0.1, 0.1, 0.1, 0.1).since(0)).isEmpty();
    Individuals three =
        Individuals.of(
            "level", Collections.nCopies(4, "day"), Collections.nCopies(4, 0.1), 3, false);
    assertThat(three.since(0)).as("a mean that is off by a last bit").isEmpty();
    assertThat(of(false, 0.1, 0.1, 0.1, 0.1, 0.2).since(4)).isNotEmpty();
    assertThat(of(false, 0.1, 0.1, 0.1, 0.1, 0.0).since(4)).isNotEmpty();
  }
}
