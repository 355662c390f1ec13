package leadlight.app.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Joint;
import leadlight.model.row.Lead;
import org.junit.jupiter.api.Test;

class RecordOpinionsTest {

  @Test
  void aQuestionThatWasNotAskedLeavesItsCellEmptyAndNotZero() {
    PointPx at = new PointPx(0, 0);
    Joint joint =
        new Joint(
            new Lead(1, at, at, at, at, 1, 0, 0),
            Map.of(),
            List.of(),
            Optional.empty(),
            Optional.of(
                new Chances(Map.of(Question.BRIDGE_BEFORE, 0.0, Question.BRIDGE_AFTER, 0.4))),
            Optional.empty());

    List<String> cells = RecordOpinions.cells(joint);

    List<String> header = RecordOpinions.header();
    assertThat(cells).hasSameSizeAs(header);
    assertThat(cells.get(header.indexOf("measures_bridge_after"))).isEqualTo("0.4");
    assertThat(cells.get(header.indexOf("measures_bridge_before"))).isEqualTo("0.0");
    assertThat(cells.get(header.indexOf("measures_ball"))).isEmpty();
    assertThat(cells.get(header.indexOf("measures_over_half"))).isEmpty();
  }
}
