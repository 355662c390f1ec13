package leadlight.quality.sampling;

import static leadlight.quality.sampling.SwitchingRules.LotResult.ACCEPTED;
import static leadlight.quality.sampling.SwitchingRules.LotResult.ACCEPTED_ENDS_REDUCED;
import static leadlight.quality.sampling.SwitchingRules.LotResult.REFUSED;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import org.junit.jupiter.api.Test;

/** ISO 2859-1, 9.3, and ANSI/ASQ Z1.4, 8.3: from memory. */
class SwitchingRulesTest {

  private static final SwitchingRules RULES = SamplingScheme.builtIn().switching();

  private static SwitchingRules.Standing after(LotResult... lots) {
    return RULES.after(List.of(lots), false);
  }

  @Test
  void twoOfFiveRefusedTighten() {
    assertThat(after(REFUSED, ACCEPTED, ACCEPTED, ACCEPTED, REFUSED).severity())
        .isEqualTo(Severity.TIGHTENED);
    assertThat(after(REFUSED, ACCEPTED, ACCEPTED, ACCEPTED, ACCEPTED, REFUSED).severity())
        .isEqualTo(Severity.NORMAL);
  }

  @Test
  void fiveAcceptedInARowRelax() {
    assertThat(after(REFUSED, REFUSED, ACCEPTED, ACCEPTED, ACCEPTED, ACCEPTED).severity())
        .isEqualTo(Severity.TIGHTENED);
    assertThat(after(REFUSED, REFUSED, ACCEPTED, ACCEPTED, ACCEPTED, ACCEPTED, ACCEPTED).severity())
        .isEqualTo(Severity.NORMAL);
  }

  @Test
  void fiveRefusedOnTightenedStop() {
    List<LotResult> lots = new ArrayList<>(Collections.nCopies(6, REFUSED));
    assertThat(RULES.after(lots, false).stopped()).isFalse();
    lots.add(REFUSED);
    assertThat(RULES.after(lots, false).stopped()).isTrue();
  }

  @Test
  void reducedNeedsConsentAndEndsWithTheFirstDoubt() {
    List<LotResult> lots = new ArrayList<>(Collections.nCopies(10, ACCEPTED));
    assertThat(RULES.after(lots, false).severity()).isEqualTo(Severity.NORMAL);
    assertThat(RULES.after(lots, true).severity()).isEqualTo(Severity.REDUCED);
    lots.add(ACCEPTED_ENDS_REDUCED);
    assertThat(RULES.after(lots, true).severity()).isEqualTo(Severity.NORMAL);
  }
}
