package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ProdPathTest {

  @Test
  void neighboursAreProddedInOneGoTheMostSuspectGroupFirst() {
    assertThat(
            ProdPath.of(new TreeMap<>(Map.of(2, 0.3, 3, 0.1, 9, 0.9, 10, 0.2, 11, 0.5, 15, 0.4))))
        .containsExactly(9, 10, 11, 15, 2, 3);
  }

  @Test
  void aGroupIsProddedFromItsMoreSuspectEnd() {
    assertThat(ProdPath.of(new TreeMap<>(Map.of(4, 0.1, 5, 0.2, 6, 0.3)))).containsExactly(6, 5, 4);
  }
}
