package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;

class DeadlineTest {

  private static final Path FILE = Path.of("row.jpg");

  @Test
  void whatIsLateIsLeftInOneLineAndClosedWhenItComes() throws InterruptedException {
    CountDownLatch go = new CountDownLatch(1);
    CountDownLatch closed = new CountDownLatch(1);
    Deadline deadline = new Deadline(Duration.ofMillis(50));
    assertThatThrownBy(() -> deadline.within(FILE, () -> waiting(go, closed)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("row.jpg takes longer than");
    go.countDown();
    assertThat(closed.await(10, TimeUnit.SECONDS)).isTrue();
  }

  @Test
  void whatIsThrownIsThrownOn() {
    assertThatThrownBy(
            () ->
                new Deadline()
                    .within(
                        FILE,
                        () -> {
                          throw new UserError("no picture");
                        }))
        .isInstanceOf(UserError.class)
        .hasMessage("no picture");
    assertThatThrownBy(
            () ->
                new Deadline()
                    .within(
                        FILE,
                        () -> {
                          throw new StackOverflowError();
                        }))
        .isInstanceOf(StackOverflowError.class);
  }

  private static AutoCloseable waiting(CountDownLatch go, CountDownLatch closed) {
    try {
      go.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return closed::countDown;
  }
}
