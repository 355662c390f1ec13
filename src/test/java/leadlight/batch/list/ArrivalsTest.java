package leadlight.batch.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArrivalsTest {

  private static final byte[] HALF = {(byte) 0xff, (byte) 0xd8, 1, 2, 3};
  private static final byte[] END = {4, (byte) 0xff, (byte) 0xd9};
  private static final long STILL = Arrivals.STILL_NS;

  @TempDir private Path folder;
  private Arrivals arrivals;

  @BeforeEach
  void watch() {
    arrivals = new Arrivals(folder);
  }

  @Test
  void aHalfWrittenFileIsWaitedFor() throws IOException {
    Path file = Files.write(folder.resolve("a.jpg"), HALF);
    assertThat(arrivals.look(0)).isEmpty();
    assertThat(arrivals.look(2 * STILL)).as("no end mark yet").isEmpty();

    Files.write(file, END, StandardOpenOption.APPEND);
    assertThat(arrivals.look(3 * STILL)).as("just changed").isEmpty();
    assertThat(arrivals.look(4 * STILL)).containsExactly(file);
    assertThat(arrivals.look(9 * STILL)).as("only once").isEmpty();
  }

  @Test
  void aFileWithoutAnEndMarkComesAfterALongerWhile() throws IOException {
    Path file = Files.write(folder.resolve("a.jpg"), HALF);
    arrivals.look(0);

    assertThat(arrivals.look(Arrivals.DOUBTFUL_NS - 1)).isEmpty();
    assertThat(arrivals.look(Arrivals.DOUBTFUL_NS)).containsExactly(file);
  }

  @Test
  void aFileThatIsRenamedWhenCompleteComesUnderItsNewName() throws IOException {
    Path aside = Files.write(folder.resolve("a.jpg.tmp"), END);
    arrivals.look(0);
    assertThat(arrivals.look(STILL)).isEmpty();

    Path file = Files.move(aside, folder.resolve("a.jpg"));
    arrivals.look(2 * STILL);
    assertThat(arrivals.look(3 * STILL)).containsExactly(file);
  }

  @Test
  void whatCouldNotBeDealtWithComesAgain() throws IOException {
    Path file = Files.write(folder.resolve("a.jpg"), END);
    arrivals.look(0);
    assertThat(arrivals.look(STILL)).containsExactly(file);

    arrivals.putBack(file);
    assertThat(arrivals.look(2 * STILL)).containsExactly(file);
  }

  @Test
  void aFolderThatIsGoneIsSaid() throws IOException {
    Files.delete(folder);

    assertThatThrownBy(() -> arrivals.look(0)).isInstanceOf(IOException.class);
    Files.createDirectory(folder);
    assertThat(arrivals.look(1)).isEmpty();
  }
}
