package leadlight.reader;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class InRowTest {

  /** Two joints: a score each, behind it an embedding of two numbers. */
  private static final float[][] SEEN = {{9, 1, 5}, {9, 3, 5}};

  @Test
  void aJointIsShownWithTheMeanAndTheSpreadOfItsRow() {
    float[][] shown = InRow.shown(SEEN, 1);
    assertThat(shown[0]).containsExactly(new float[] {1, 5, 2, 5, 1, 0.001f}, Offset.offset(1e-5f));
    assertThat(shown[1]).containsExactly(new float[] {3, 5, 2, 5, 1, 0.001f}, Offset.offset(1e-5f));
  }
}
