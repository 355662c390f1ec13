package leadlight.pipeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;

class InOrderTest {

  @Test
  void resultsComeInTheOrderOfTheListEvenIfTheFirstIsLast() {
    CountDownLatch secondIsDone = new CountDownLatch(1);
    List<Integer> taken = new ArrayList<>();

    InOrder.each(
        List.of(1, 2, 3),
        2,
        item -> {
          if (item == 1) {
            await(secondIsDone);
          } else {
            secondIsDone.countDown();
          }
          return item;
        },
        taken::add);

    assertThat(taken).containsExactly(1, 2, 3);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void oneThreadDoesAllTheSame() {
    List<Integer> taken = new ArrayList<>();

    InOrder.each(IntStream.range(0, 100).boxed().toList(), 1, item -> item * item, taken::add);

    assertThat(taken).hasSize(100).isSorted();
  }

  @Test
  void whatTheWorkThrowsArrivesUnwrapped() {
    assertThatThrownBy(
            () ->
                InOrder.each(
                    List.of(1),
                    2,
                    item -> {
                      throw new UserError("one line");
                    },
                    item -> {}))
        .isInstanceOf(UserError.class)
        .hasMessage("one line");
  }
}
