package leadlight.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said twice at once counts once. */
class HandsTest {

  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

  private final Hands hands = new Hands();
  private final List<String> kept = new ArrayList<>();

  private boolean said(String what, long afterMs) {
    return hands.once(NOON.plusMillis(afterMs), List.of(what), () -> kept.add(what));
  }

  @Test
  void aKeyThatBouncesCountsOnceHoweverLateItsWordArrives() {
    assertThat(said("pin 7 firm", 0)).isTrue();
    assertThat(said("pin 7 firm", 30)).isFalse();
    assertThat(said("pin 7 firm", -30)).as("another tab's press that was overtaken").isFalse();
    assertThat(kept).hasSize(1);
  }

  @Test
  void theSameLaterOnCountsAgain() {
    said("pin 7 heated", 0);
    assertThat(said("pin 7 heated", 1500)).isTrue();
  }

  @Test
  void somethingElseAtOnceCounts() {
    said("pin 7 firm", 0);
    assertThat(said("pin 8 firm", 30)).isTrue();
  }

  @Test
  void whatWasRefusedWasNotSaid() {
    assertThatThrownBy(
            () ->
                hands.once(
                    NOON,
                    List.of("yes"),
                    () -> {
                      throw new IllegalStateException("refused");
                    }))
        .hasMessage("refused");
    assertThat(said("yes", 10)).isTrue();
  }
}
