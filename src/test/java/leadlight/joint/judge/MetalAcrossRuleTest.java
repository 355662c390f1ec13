package leadlight.joint.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.joint.cut.Signals;
import org.junit.jupiter.api.Test;

class MetalAcrossRuleTest {

  private static final MetalAcrossRule RULE = MetalAcrossRule.builtIn();
  private static final double APART = RULE.apartFrom().value();
  private static final double LIGHT = RULE.lightFrom().value();
  private static final double WIDTH = RULE.gapFromPx().value();
  private static final double ACROSS = RULE.acrossFrom().value();
  private static final double JOINS = RULE.joinsFrom().value();

  private static Signals gap(double across, double apart, double light, double widthPx) {
    return new Signals()
        .put("gap_metal_across", across)
        .put("gap_metal_apart", apart)
        .put("gap_metal_light", light)
        .put("gap_width_px", widthPx);
  }

  private static List<Integer> crossed(double... shares) {
    List<OptionalDouble> crossed =
        RULE.crossed(
            Arrays.stream(shares).mapToObj(share -> gap(share, APART, LIGHT, WIDTH)).toList());
    return IntStream.range(0, shares.length)
        .filter(i -> crossed.get(i).isPresent())
        .boxed()
        .toList();
  }

  @Test
  void aGapIsCrossedFromTheBorderOn() {
    assertThat(crossed(0.1, ACROSS, 0.1)).containsExactly(1);
    assertThat(crossed(0.1, ACROSS - 1e-9, 0.1)).isEmpty();
  }

  @Test
  void alloyRunsOnIntoGapsBesideACrossedOneAndNoFarther() {
    assertThat(crossed(JOINS, 0.1, JOINS, JOINS, ACROSS, JOINS, JOINS - 1e-9, JOINS))
        .containsExactly(2, 3, 4, 5);
  }

  @Test
  void threeGapsSideBySideAreFloodedAtLess() {
    double flood = RULE.floodFrom().value();
    assertThat(crossed(0.1, flood, flood, flood, 0.1)).containsExactly(1, 2, 3);
    assertThat(crossed(0.1, flood, flood, 0.1, flood)).isEmpty();
    assertThat(crossed(0.1, flood, flood - 1e-9, flood, 0.1)).isEmpty();
  }

  @Test
  void aRowFloodedThroughoutIsCrossedThroughout() {
    assertThat(crossed(1, 1, 1)).containsExactly(0, 1, 2);
  }

  @Test
  void whereMetalAndBoardLookAlikeTheLeadsLieInShadowOrTheGapIsTooNarrowNoneIsSeen() {
    assertThat(RULE.crossed(List.of(gap(1, APART - 1e-9, LIGHT, WIDTH))).get(0)).isEmpty();
    assertThat(RULE.crossed(List.of(gap(1, APART, LIGHT - 1e-9, WIDTH))).get(0)).isEmpty();
    assertThat(RULE.crossed(List.of(gap(1, APART, LIGHT, WIDTH - 1e-9))).get(0)).isEmpty();
  }

  @Test
  void theShareIsHandedOn() {
    assertThat(RULE.crossed(List.of(gap(1.04, 1, 1, 9))).get(0)).hasValue(1.04);
  }
}
