package leadlight.trial.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import leadlight.model.result.Nudge.Motion;
import leadlight.trial.truth.NudgeTruth;
import org.junit.jupiter.api.Test;

class NudgeTallyTest {

  private static List<String> told(int pushed, boolean loose, double um, int pin, Motion said) {
    NudgeTruth.Pushed truth =
        new NudgeTruth.Pushed(Path.of("a.jpg"), Path.of("b.jpg"), pushed, um, loose);
    NudgeTally tally = new NudgeTally();
    tally.add(new NudgeTally.Outcome(truth, 30, pin, said, 0, 5, ""));
    return tally.lines();
  }

  @Test
  void aLeadBesideTheLooseOneThatPassesAsFirmIsWrong() {
    assertThat(told(7, true, 40, 8, Motion.FIRM)).anyMatch(line -> line.startsWith("WRONG b.jpg"));
  }

  @Test
  void aLooseLeadThatHardlyMovedMayPassAsFirm() {
    assertThat(told(7, true, 20, 7, Motion.FIRM)).noneMatch(line -> line.startsWith("WRONG"));
    assertThat(told(7, true, 40, 7, Motion.FIRM)).anyMatch(line -> line.startsWith("WRONG"));
  }

  @Test
  void whatIsNotJudgedIsNotWrong() {
    assertThat(told(7, true, 40, 8, Motion.CANNOT_TELL)).noneMatch(l -> l.startsWith("WRONG"));
  }
}
