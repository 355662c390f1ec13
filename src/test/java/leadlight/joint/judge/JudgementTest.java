package leadlight.joint.judge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JudgementTest {

  @Test
  void theBuiltInJudgementLoadsAndNamesItsSources() {
    Judgement judgement = Judgement.builtIn();
    assertThat(judgement.source()).isNotEmpty();
    assertThat(judgement.unwetted().trees()).isNotEmpty();
  }
}
