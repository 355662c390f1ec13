package leadlight.quality.gauge.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;
import leadlight.quality.Estimate;
import leadlight.quality.OutsideR;
import org.junit.jupiter.api.Test;

/** AIAG's gauge study, whole and with readings left out, beside R's nlme (outside.R). */
class ComponentsTest {

  private static List<Cells.Reading> aiag() throws IOException {
    List<Cells.Reading> readings = new ArrayList<>();
    for (String line :
        Files.readAllLines(Path.of("src/test/resources/quality/aiag-gauge.csv")).subList(1, 91)) {
      String[] cells = line.split(",");
      readings.add(new Cells.Reading(cells[0], cells[1], Double.parseDouble(cells[4])));
    }
    return readings;
  }

  @Test
  void wholeDataGiveWhatRGives() throws IOException {
    assertLikeR(Reml.of(Cells.of(aiag())), "reml whole");
  }

  /** Readings 3, 17, 18, 77 and all of part 4 by operator B are missing. */
  @Test
  void unevenDataGiveWhatRGives() throws IOException {
    List<Cells.Reading> readings = aiag();
    for (int line : new int[] {77, 18, 17, 3}) {
      readings.remove(line - 1);
    }
    readings.removeIf(r -> r.part().equals("4") && r.operator().equals("B"));
    Cells cells = Cells.of(readings);

    assertThat(cells.isConnected()).isTrue();
    assertThat(cells.isFull()).isFalse();
    assertLikeR(Reml.of(cells), "reml part");
    assertThat(Sureness.of(cells)).as("an empty cell has no interval").isEmpty();
  }

  private static void assertLikeR(Spread spread, String name) {
    assertThat(spread.parts()).isCloseTo(OutsideR.figure(name, 0), within(1e-4));
    assertThat(spread.operators()).isCloseTo(OutsideR.figure(name, 1), within(1e-4));
    assertThat(spread.equipment()).isCloseTo(OutsideR.figure(name, 3), within(1e-4));
  }

  /** A cell is empty, so that the whole-table analysis cannot stand in. */
  private static Cells uneven(double... repeats) {
    List<Cells.Reading> readings = new ArrayList<>();
    for (String part : List.of("1", "2", "3")) {
      for (String operator : List.of("a", "b")) {
        for (double repeat : repeats) {
          readings.add(new Cells.Reading(part, operator, repeat * (1 + part.compareTo("1") * 0.1)));
        }
      }
    }
    readings.removeIf(r -> r.part().equals("3") && r.operator().equals("b"));
    return Cells.of(readings);
  }

  @Test
  void equalRepeatsAreRefusedInALine() {
    assertThatThrownBy(() -> Reml.of(uneven(0.1, 0.1, 0.1)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("too few digits");
  }

  @Test
  void hugeValuesAreRefusedInALine() {
    for (double huge : new double[] {1e200, 1e160, 1e154, 1e100}) {
      assertThatCode(() -> Reml.of(uneven(huge, huge * 1.1)))
          .satisfiesAnyOf(
              thrown -> assertThat(thrown).isNull(),
              thrown -> assertThat(thrown).isInstanceOf(UserError.class));
    }
    assertThatThrownBy(() -> Reml.of(uneven(1e200, 1.1e200)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("too large");
  }

  /** Repeats alone are a plain variance: 60 degrees of freedom, chi-squared (R: qchisq). */
  @Test
  void theIntervalOfRepeatsIsTheChiSquaredOne() throws IOException {
    Cells cells = Cells.of(aiag());
    Sureness sureness = Sureness.of(cells).orElseThrow();
    double variance = cells.within() / 60;
    Estimate repeats = sureness.of(Math.sqrt(variance), Spread::equipment);

    assertThat(repeats.lower()).isCloseTo(Math.sqrt(60 * variance / 83.29767), within(2e-4));
    assertThat(repeats.upper()).isCloseTo(Math.sqrt(60 * variance / 40.48175), within(4e-4));
    Estimate gauge = sureness.of(0.3024, Spread::gauge);
    assertThat(gauge.upper()).as("three operators tell little").isGreaterThan(0.8);
  }

  @Test
  void partsThatShareNoOperatorTellNothing() {
    Cells apart =
        Cells.of(
            List.of(
                new Cells.Reading("1", "a", 1),
                new Cells.Reading("1", "a", 2),
                new Cells.Reading("2", "b", 1),
                new Cells.Reading("2", "b", 2)));
    assertThat(apart.isConnected()).isFalse();
  }
}
