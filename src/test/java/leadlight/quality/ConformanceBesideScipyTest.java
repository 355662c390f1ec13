package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.grade.limits.Bound;
import leadlight.grade.limits.Conformance;
import org.junit.jupiter.api.Test;

/** Examples of JCGM 106:2012 by SciPy, to more digits than the guide prints. */
class ConformanceBesideScipyTest {

  @Test
  void probabilitiesOfKeepingALimit() {
    double oil =
        Conformance.probability(13.6, 1.8, 12.5, Bound.LOWER)
            + Conformance.probability(13.6, 1.8, 16.3, Bound.UPPER)
            - 1;

    assertThat(Conformance.probability(-5.47, 0.05, -5.40, Bound.UPPER))
        .isCloseTo(Outside.figure("conformance", 0), within(1e-12));
    assertThat(Conformance.probability(509.7, 8.6, 490, Bound.LOWER))
        .isCloseTo(Outside.figure("conformance", 1), within(1e-12));
    assertThat(oil).isCloseTo(Outside.figure("conformance", 2), within(1e-12));
  }
}
