package leadlight.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class BenchLookTest {

  @Test
  void whereNoEdgeTellsSharpnessIsUnknownAndNotTheBest() {
    assertThat(BenchLook.blurPx(List.of())).isEmpty();
  }
}
