package leadlight.joint.judge;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.Question;
import org.junit.jupiter.api.Test;

class JudgementTest {

  @Test
  void theBuiltInJudgementLoadsAndNamesItsSources() {
    Judgement judgement = Judgement.builtIn();
    assertThat(judgement.source()).isNotEmpty();
    assertThat(judgement.card(Question.UNWETTED).trees()).isNotEmpty();
    assertThat(judgement.joint())
        .containsKeys(Question.MISSING, Question.UNWETTED, Question.OPEN, Question.EXCESS);
  }
}
