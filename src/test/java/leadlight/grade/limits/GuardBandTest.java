package leadlight.grade.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GuardBandTest {

  private static final AcceptanceSet IPC = AcceptanceSet.load("ipc-a-610");

  @TempDir Path folder;

  /** By R: {@code qnorm(p)}, {@code pnorm(3 - qnorm(p))}, {@code pnorm(-1 - qnorm(p))}. */
  @ParameterizedTest
  @CsvSource({
    "90, 0.10, 1.28155156554, 0.957142573827, 0.0112579145126",
    "95, 0.05, 1.64485362695, 0.91231453675, 0.00408631306003",
    "99, 0.01, 2.32634787404, 0.749733747467, 0.000439960180474"
  })
  void aBandIsAQuantileAndSaysWhatItLetsPass(
      String percent, double atLimit, double band, double inside, double beyond) {
    GuardBand guard = GuardBand.ofPercent(percent);

    assertThat(guard.bandU()).isCloseTo(band, within(1e-10));
    assertThat(guard.accepts(0)).isCloseTo(atLimit, within(1e-12));
    assertThat(guard.accepts(3)).isCloseTo(inside, within(1e-8));
    assertThat(guard.accepts(-1)).isCloseTo(beyond, within(1e-8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"50", "100", "5", "", "0.95", "95.5", "x", "-95", "095"})
  void otherLevelsAreRefused(String percent) {
    assertThatThrownBy(() -> AcceptanceSet.load("ipc-a-610@" + percent))
        .isInstanceOf(UserError.class)
        .hasMessage("a guard band is 51 to 99 % sure, as 95, 98 or 99, not \"" + percent + "\"");
  }

  @Test
  void aChosenBandIsPartOfTheSetsNameAndHash() {
    AcceptanceSet surer = AcceptanceSet.load("ipc-a-610@99");

    assertThat(surer.decisionLevel()).isEqualTo(0.99);
    assertThat(surer.id()).isEqualTo("ipc-a-610@99");
    assertThat(surer.fileId()).isEqualTo("ipc-a-610");
    assertThat(surer.builtIn()).isTrue();
    assertThat(surer.sha256())
        .hasSize(64)
        .isNotEqualTo(IPC.sha256())
        .isNotEqualTo(AcceptanceSet.load("ipc-a-610@98").sha256())
        .isEqualTo(AcceptanceSet.load("ipc-a-610@99").sha256());
    assertThat(surer.chosenBand()).contains(new GuardBand(0.99));
    assertThat(surer.usualBand()).isEqualTo(new GuardBand(0.95));
  }

  @ParameterizedTest
  @ValueSource(strings = {"51", "90", "94"})
  void aNarrowerBandThanTheLimitsOwnIsRefused(String percent) {
    assertThatThrownBy(() -> AcceptanceSet.load("ipc-a-610@" + percent))
        .isInstanceOf(UserError.class)
        .hasMessage("a guard band may be surer than the limits' own 95 %, not " + percent + " %");
  }

  @Test
  void theFilesOwnBandIsNoChoice() {
    AcceptanceSet same = AcceptanceSet.load("ipc-a-610@95");

    assertThat(same.id()).isEqualTo("ipc-a-610");
    assertThat(same.sha256())
        .isEqualTo(IPC.sha256())
        .isEqualTo(DataFile.builtIn("acceptance/ipc-a-610.json").sha256());
    assertThat(same.chosenBand()).isEmpty();
    assertThat(same.decisionLevel()).isEqualTo(0.95);
  }

  @Test
  void aUsersFileTakesABandTooAndIsNotBuiltIn() throws IOException {
    Path file = folder.resolve("my@limits.json");
    Files.writeString(file, DataFile.builtIn("acceptance/ipc-a-610.json").text() + "\n");

    assertThat(AcceptanceSet.load(file.toString()).builtIn()).isFalse();
    assertThat(AcceptanceSet.load(file + "@98").decisionLevel()).isEqualTo(0.98);
    assertThat(AcceptanceSet.load(file + "@98").builtIn()).isFalse();
    assertThat(AcceptanceSet.load("nasa-8739-2").builtIn()).isTrue();
  }
}
