package leadlight.app.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.trial.sets.EnrolTally;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trial shows a bench its photos and counts what that is worth on another. */
class EnrolTrialTest {

  private static final Path PICTURES = Path.of("src/test/resources/enrol");
  private static final String SHOWN =
      """
      bench,photo,as,pins
      ring,sound-0.jpg,sound,all
      ring,sound-1.jpg,sound,all
      ring,unsoldered-0.jpg,unsoldered,all
      ring,unsoldered-1.jpg,unsoldered,all
      """;

  @TempDir private Path folder;

  private EnrolTally counted(String plan) throws IOException {
    return counted(plan, false);
  }

  private EnrolTally counted(String plan, boolean unfamiliar) throws IOException {
    Path file = folder.resolve("plan.csv");
    Files.writeString(file, plan);
    return new EnrolTrial(
            PICTURES, AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), Opinions.BOTH, unfamiliar)
        .count(file);
  }

  /**
   * The row of unsoldered-1 is read one lead off: by hand it would be shown, by truth it is not.
   */
  @Test
  void aRowThatIsReadWrongIsNotShownAndFewerPhotosAreNoBench() throws IOException {
    EnrolTally tally = counted(SHOWN + "ring,mixed-0.jpg,judge,odd\n");
    assertThat(tally.lines()).contains("rows not found or wrong: 1");
    List<String> one = joints(tally, "ring,1,mixed-0.jpg,");
    List<String> two = joints(tally, "ring,2,mixed-0.jpg,");
    assertThat(joints(tally, "ring,4,")).as("two photos of a kind are not four").isEmpty();
    assertThat(one).hasSize(10).hasSameSizeAs(two);
    assertThat(two)
        .allMatch(it -> it.contains("not-yet-enrolled"))
        .allMatch(it -> it.split(",")[5].equals(it.split(",")[6]))
        .allMatch(it -> Integer.parseInt(it.split(",")[3]) % 2 == 1);
  }

  @Test
  void asIfTheMakeWereUnfamiliarNoJointIsGood() throws IOException {
    String plan = SHOWN + "ring,mixed-0.jpg,judge,all\n";
    assertThat(verdicts(counted(plan, true))).isNotEmpty().doesNotContain("acceptable");
    assertThat(verdicts(counted(plan))).contains("acceptable");
  }

  private static List<String> verdicts(EnrolTally tally) {
    return joints(tally, "ring,").stream().map(it -> it.split(",")[6]).toList();
  }

  private static List<String> joints(EnrolTally tally, String beginning) {
    return tally.csv().stream().filter(it -> it.startsWith(beginning)).toList();
  }

  @Test
  void aPhotoWithoutTruthIsNamed() {
    assertThatThrownBy(() -> counted("bench,photo,as,pins\nring,other-bench.jpg,sound,all\n"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("other-bench.jpg");
  }
}
