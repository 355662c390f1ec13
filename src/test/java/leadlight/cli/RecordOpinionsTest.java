package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.FaultChances;
import leadlight.model.Joint;
import leadlight.model.Lead;
import leadlight.model.PointPx;
import org.junit.jupiter.api.Test;

class RecordOpinionsTest {

  @Test
  void aQuestionThatWasNotAskedLeavesItsCellEmptyAndNotZero() {
    PointPx at = new PointPx(0, 0);
    double none = FaultChances.NOT_ASKED;
    Joint joint =
        new Joint(
            new Lead(1, at, at, at, at, 1, 0, 0),
            Map.of(),
            List.of(),
            Optional.empty(),
            Optional.of(new FaultChances(0.1, 0.2, 0.5, 0.3, 0, 0.4, none, none, none)),
            Optional.empty());

    List<String> cells = RecordOpinions.cells(joint);

    List<String> header = RecordOpinions.header();
    assertThat(cells).hasSameSizeAs(header);
    assertThat(cells.get(header.indexOf("measures_bridge_to_next_pin"))).isEqualTo("0.4");
    assertThat(cells.get(header.indexOf("measures_bridge_to_pin_before"))).isEqualTo("0.0");
    assertThat(cells.get(header.indexOf("measures_solder_ball"))).isEmpty();
    assertThat(cells.get(header.indexOf("measures_overhang_above_half"))).isEmpty();
  }
}
