package leadlight.quality.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** AIAG MSA, 4th edition, attribute study; both sides of every bound, and the bound itself. */
class AgreementLimitsTest {

  private static final AgreementLimits LIMITS = AgreementLimits.builtIn();

  @ParameterizedTest
  @CsvSource({
    "1,acceptable",
    "0.90,acceptable",
    "0.899,marginal",
    "0.80,marginal",
    "0.799,unacceptable",
    "0,unacceptable"
  })
  void effectiveness(double share, String verdict) {
    assertThat(LIMITS.effectiveness().verdict(share)).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "0,acceptable",
    "0.02,acceptable",
    "0.021,marginal",
    "0.05,marginal",
    "0.051,unacceptable",
    "1,unacceptable"
  })
  void misses(double share, String verdict) {
    assertThat(LIMITS.miss().verdict(share)).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "0,acceptable",
    "0.05,acceptable",
    "0.051,marginal",
    "0.10,marginal",
    "0.101,unacceptable"
  })
  void falseAlarms(double share, String verdict) {
    assertThat(LIMITS.falseAlarm().verdict(share)).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "0.86,acceptable",
    "0.75,acceptable",
    "0.749,marginal",
    "0.40,marginal",
    "0.399,unacceptable",
    "-0.092,unacceptable"
  })
  void kappa(double kappa, String verdict) {
    assertThat(LIMITS.kappa().verdict(kappa)).isEqualTo(verdict);
  }
}
