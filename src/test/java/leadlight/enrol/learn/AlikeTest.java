package leadlight.enrol.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.enrol.Mock;
import leadlight.enrol.learn.Enrolment.Setting;
import org.junit.jupiter.api.Test;

class AlikeTest {

  private static final Setting LIKE = Mock.SETTING;
  private static final Setting LARGER = new Setting(60, Optional.of(0.03), 20, 200, true);
  private static final Setting SOFTER = new Setting(40, Optional.of(0.08), 20, 200, true);
  private static final Setting DARKER = new Setting(40, Optional.of(0.03), 20, 100, true);
  private static final Setting UNKNOWN = new Setting(40, Optional.empty(), 20, 200, true);
  private static final Setting STRANGE = new Setting(40, Optional.of(0.03), 20, 200, false);

  private final Alike alike = new Alike(EnrolTuning.builtIn());

  private Optional<String> notAs(Setting photo, Setting... shown) {
    return alike.notAs(photo, List.of(shown));
  }

  private Optional<String> apart(List<Setting> sound, List<Setting> unsoldered) {
    return alike.apart(sound, unsoldered);
  }

  @Test
  void eachRespectIsNamed() {
    assertThat(notAs(LIKE, LIKE)).isEmpty();
    assertThat(notAs(LARGER, LIKE)).contains("scale");
    assertThat(notAs(SOFTER, LIKE)).contains("focus");
    assertThat(notAs(DARKER, LIKE)).contains("light");
    assertThat(notAs(STRANGE, LIKE)).contains("make");
    assertThat(notAs(LIKE, STRANGE)).contains("make");
  }

  @Test
  void onePhotoMustBeAlikeInAllRespects() {
    assertThat(notAs(LIKE, LARGER, DARKER)).contains("light");
    assertThat(notAs(SOFTER, LIKE, new Setting(60, Optional.of(0.08), 20, 200, true)))
        .contains("focus");
    assertThat(apart(List.of(LIKE), List.of(LARGER, DARKER))).contains("light");
    assertThat(apart(List.of(LIKE, DARKER), List.of(LARGER, DARKER))).isEmpty();
  }

  @Test
  void aSharperPhotoIsJudgedButProvesNothingOfSofterOnes() {
    assertThat(notAs(LIKE, SOFTER)).isEmpty();
    assertThat(apart(List.of(LIKE), List.of(SOFTER))).contains("focus");
  }

  @Test
  void unknownSharpnessIsLikeNone() {
    assertThat(notAs(UNKNOWN, LIKE)).contains("focus");
    assertThat(notAs(LIKE, UNKNOWN)).contains("focus");
    assertThat(notAs(UNKNOWN, UNKNOWN)).contains("focus");
  }

  @Test
  void aMixtureOfMakesIsNoBench() {
    assertThat(apart(List.of(LIKE), List.of(LIKE, STRANGE))).contains("make");
    assertThat(apart(List.of(LIKE, STRANGE), List.of(LIKE))).contains("make");
    assertThat(apart(List.of(STRANGE), List.of(STRANGE))).isEmpty();
  }
}
