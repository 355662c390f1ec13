package leadlight;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

class BrowserNeededTest {

  private static final String WHY = "no Chromium here";

  @Test
  void onTheBuildMachineAMissingBrowserFailsTheTest() {
    assertThatThrownBy(() -> Browser.require(false, true, WHY))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining(WHY);
  }

  @Test
  void elsewhereItSkipsTheTestAndSaysWhy() {
    assertThatThrownBy(() -> Browser.require(false, false, WHY))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining(WHY);
  }

  @Test
  void aBrowserThatIsThereIsUsedEverywhere() {
    assertThatCode(() -> Browser.require(true, true, WHY)).doesNotThrowAnyException();
    assertThatCode(() -> Browser.require(true, false, WHY)).doesNotThrowAnyException();
  }
}
