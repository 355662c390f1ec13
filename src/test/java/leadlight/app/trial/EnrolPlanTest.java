package leadlight.app.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import leadlight.app.trial.EnrolPlan.As;
import leadlight.app.trial.EnrolPlan.Part;
import leadlight.app.trial.EnrolPlan.Pins;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which photo a trial shows to which bench. */
class EnrolPlanTest {

  private static final String HEADER = "bench,photo,as,pins\n";

  @TempDir private Path folder;

  private Map<String, List<Part>> read(String table) throws IOException {
    Path file = folder.resolve("plan.csv");
    Files.writeString(file, table);
    return EnrolPlan.read(file);
  }

  @Test
  void benchesAndTheirPhotosKeepTheOrderOfTheTable() throws IOException {
    Map<String, List<Part>> plan =
        read(HEADER + "two,b.jpg,sound,all\none,a.jpg,unsoldered,odd\ntwo,c.jpg,judge,even\n");
    assertThat(plan.keySet()).containsExactly("two", "one");
    assertThat(plan.get("two"))
        .containsExactly(
            new Part("b.jpg", As.SOUND, Pins.ALL), new Part("c.jpg", As.JUDGE, Pins.EVEN));
    assertThat(plan.get("one")).containsExactly(new Part("a.jpg", As.UNSOLDERED, Pins.ODD));
  }

  @Test
  void aHalfOfTheRowHasItsOwnPinsAlone() {
    assertThat(List.of(1, 2, 3, 4)).filteredOn(Pins.ODD::has).containsExactly(1, 3);
    assertThat(List.of(1, 2, 3, 4)).filteredOn(Pins.EVEN::has).containsExactly(2, 4);
    assertThat(List.of(1, 2, 3, 4)).allMatch(Pins.ALL::has);
  }

  @Test
  void aLineThatIsNoneIsRefusedByItsNumber() {
    for (String line :
        List.of("ring,a.jpg,good,all", "ring,a.jpg,sound,some", "ring,a.jpg,sound")) {
      assertThatThrownBy(() -> read(HEADER + "ring,a.jpg,sound,all\n" + line + "\n"))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("line 3");
    }
    assertThatThrownBy(() -> read("photo,pin,state\n")).hasMessageContaining("first line must be");
    assertThatThrownBy(() -> EnrolPlan.read(folder.resolve("none.csv")))
        .hasMessageContaining("cannot be read");
  }
}
