package leadlight.app.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NudgeRunTest {

  @TempDir private Path folder;

  @Test
  void thePhotoAtRestIsNoPhotoOfAPushedLeadThoughItLiesInTheFolder() throws IOException {
    Path rest = Files.createFile(folder.resolve("a.jpg"));
    Path second = Files.createFile(folder.resolve("c.PNG"));
    Path first = Files.createFile(folder.resolve("b.jpg"));
    Files.createFile(folder.resolve("notes.txt"));
    assertThat(NudgeRun.pushed(rest, List.of(folder))).containsExactly(first, second);
  }
}
