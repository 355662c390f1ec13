package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ProdPathTest {

  private static SortedMap<Integer, Double> suspicions(double... ofPins) {
    SortedMap<Integer, Double> suspicions = new TreeMap<>();
    for (int i = 0; i < ofPins.length; i++) {
      suspicions.put(i + 1, ofPins[i]);
    }
    return suspicions;
  }

  @Test
  void neighboursAreProddedInOneGoTheMostSuspectGroupFirst() {
    assertThat(
            ProdPath.of(
                new TreeMap<>(Map.of(2, 0.3, 3, 0.1, 9, 0.9, 10, 0.2, 11, 0.5, 15, 0.4)), 1))
        .containsExactly(9, 10, 11, 15, 2, 3);
  }

  @Test
  void aGroupIsProddedFromItsMoreSuspectEnd() {
    assertThat(ProdPath.of(suspicions(0.1, 0.2, 0.3), 1)).containsExactly(3, 2, 1);
  }

  @Test
  void ofARowUnjudgedThroughoutTheMostSuspectComeFirst() {
    assertThat(ProdPath.of(suspicions(0.1, 0.2, 0.9, 0.8, 0.1, 0.3, 0.1, 0.5), 0.25))
        .containsExactly(3, 4, 8, 7, 6, 5, 2, 1);
  }

  @Test
  void ofFewOneComesFirst() {
    assertThat(ProdPath.of(suspicions(0.1, 0.9, 0.2), 0.25)).containsExactly(2, 3, 1);
  }
}
