package leadlight.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The distances are counted by hand. */
class LikenessTest {

  @Test
  void editsAreCountedASwapOnce() {
    assertThat(Likeness.edits("score", "score")).isZero();
    assertThat(Likeness.edits("socre", "score")).isOne();
    assertThat(Likeness.edits("scor", "score")).isOne();
    assertThat(Likeness.edits("SCORE", "score")).isZero();
    assertThat(Likeness.edits("", "score")).isEqualTo(5);
    assertThat(Likeness.edits("kitten", "sitting")).isEqualTo(3);
  }

  @Test
  void whatIsNotLikeAnythingIsNotGuessed() {
    List<String> commands = List.of("score", "batch", "record");
    assertThat(Likeness.nearest("scroe", commands)).contains("score");
    assertThat(Likeness.nearest("rec", commands)).contains("record");
    assertThat(Likeness.nearest("zzzz", commands)).isEmpty();
    assertThat(Likeness.nearest("score", List.of())).isEmpty();
  }
}
