package leadlight.app.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.enrol.Bench;
import leadlight.enrol.Mock;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Setting;
import org.junit.jupiter.api.Test;

/** What is said of a bench promises no more than grading keeps. */
class BenchWordsTest {

  private static String words(boolean general) {
    Setting setting = new Setting(40, Optional.of(0.03), 20, 200, general);
    Bench bench =
        new Mock()
            .photo(Kind.SOUND, 15, -0.3, setting)
            .photo(Kind.SOUND, 15, -0.3, setting)
            .photo(Kind.UNSOLDERED, 15, 0.3, setting)
            .photo(Kind.UNSOLDERED, 15, 0.3, setting)
            .bench();
    assertThat(bench.vouches()).isTrue();
    List<String> lines = BenchWords.of(bench.enrolment());
    return String.join("\n", lines);
  }

  @Test
  void onAnUnfamiliarMakeItIsSaidThatNothingIsMadeGood() {
    assertThat(words(false)).contains("makes nothing good");
    assertThat(words(true)).doesNotContain("makes nothing good");
  }

  @Test
  void aRowThatLooksLikeTheOtherKindIsNamedWithWhatToLookFor() {
    Bench bench =
        new Mock()
            .photo(Kind.SOUND, 15, -0.3)
            .photo(Kind.SOUND, 15, -0.3)
            .photo(Kind.SOUND, 1, 0.3)
            .photo(Kind.UNSOLDERED, 15, 0.3)
            .photo(Kind.UNSOLDERED, 15, 0.3)
            .bench();
    assertThat(BenchWords.of(bench.enrolment()))
        .contains(
            "look again at SOUND.jpg: shown as sound, to all other photos one joint looks like the"
                + " other kind; pin 1; was it named right, and does leadlight score find its row"
                + " right?");
  }
}
