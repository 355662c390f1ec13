package leadlight.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import leadlight.model.UserError;
import leadlight.vision.Frame;
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
  void aPhotoIsClosedWhenItsWorkHasEndedAlsoIfThatWasLate() throws InterruptedException {
    Path whole = Path.of("src/test/resources/photo/grey.jpg");
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    AtomicReference<Thread> late = new AtomicReference<>();
    Deadline deadline = new Deadline(Duration.ofMillis(50));
    assertThatThrownBy(
            () ->
                deadline.reading(
                    whole,
                    photo -> {
                      late.set(Thread.currentThread());
                      begun.countDown();
                      return waiting(go, go);
                    }))
        .hasMessageContaining("grey.jpg takes longer than");
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(Frame.live()).isEqualTo(1);
    go.countDown();
    late.get().join(10_000);
    assertThat(Frame.live()).isZero();
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
