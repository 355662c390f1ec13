package leadlight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.model.UserError;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.json.Scenes;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportWriterTest {

  private static final byte[] PAGE = {'<', 'p', '>'};

  private final ReportWriter writer = new ReportWriter(Scenes.CONTEXT, (scored, picture) -> PAGE);
  private final Frame picture = Scenes.picture("dev-023");
  @TempDir Path folder;

  private int live;

  @BeforeEach
  void countFrames() {
    live = Frame.live();
  }

  @AfterEach
  void nothingStaysOpen() {
    assertThat(Frame.live()).isEqualTo(live);
    picture.close();
  }

  @Test
  void the_files_carry_the_name_of_the_photo() throws IOException {
    Path out = folder.resolve("new/reports");
    WrittenReport written = writer.write(photo("port 3.jpg", "aa"), picture, out);
    assertThat(written.json()).isEqualTo(out.resolve("port 3.json"));
    assertThat(names(out))
        .containsExactly("port 3.annotated.png", "port 3.csv", "port 3.html", "port 3.json");
    assertThat(written.page()).hasBinaryContent(PAGE);
  }

  @Test
  void another_photo_of_that_name_keeps_its_results() throws IOException {
    writer.write(photo("port.jpg", "aa"), picture, folder);
    byte[] first = Files.readAllBytes(folder.resolve("port.json"));
    WrittenReport other = writer.write(photo("port.png", "bb"), picture, folder);
    assertThat(other.json()).hasFileName("port-2.json");
    assertThat(other.picture()).hasFileName("port-2.annotated.png");
    assertThat(Files.readAllBytes(folder.resolve("port.json"))).isEqualTo(first);
  }

  @Test
  void the_same_photo_replaces_its_own_results_and_no_others() throws IOException {
    writer.write(photo("port.jpg", "aa"), picture, folder);
    writer.write(photo("port.jpg", "bb"), picture, folder);
    assertThat(writer.write(photo("port.jpg", "aa"), picture, folder).json())
        .hasFileName("port.json");
    assertThat(writer.write(photo("port.jpg", "bb"), picture, folder).json())
        .hasFileName("port-2.json");
    assertThat(names(folder)).hasSize(8);
  }

  @Test
  void files_that_are_no_reports_are_left_alone() throws IOException {
    Files.writeString(folder.resolve("a.json"), "{\"photo\": {\"sha256\": \"" + sha("aa") + "\"}}");
    Files.writeString(folder.resolve("b.json"), "not JSON");
    Files.writeString(folder.resolve("c.csv"), "my own table");
    assertThat(writer.write(photo("a.jpg", "aa"), picture, folder).json()).hasFileName("a-2.json");
    assertThat(writer.write(photo("b.jpg", "aa"), picture, folder).json()).hasFileName("b-2.json");
    assertThat(writer.write(photo("c.jpg", "aa"), picture, folder).csv()).hasFileName("c-2.csv");
    assertThat(folder.resolve("c.csv")).hasContent("my own table");
  }

  @Test
  void same_named_photos_at_once_all_survive() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      var jobs =
          IntStream.range(0, 8)
              .mapToObj(
                  i ->
                      (Callable<WrittenReport>)
                          () -> writer.write(photo("port.jpg", "a" + i), picture, folder))
              .toList();
      Set<Path> files = new TreeSet<>();
      for (var done : threads.invokeAll(jobs)) {
        files.add(done.get().json());
      }
      assertThat(files).hasSize(8);
    } finally {
      threads.shutdown();
    }
    assertThat(names(folder)).hasSize(32);
  }

  @Test
  void a_very_long_name_in_any_script_is_cut_to_what_folders_hold() throws IOException {
    WrittenReport written = writer.write(photo("水位".repeat(60) + ".jpg", "aa"), picture, folder);
    assertThat(written.picture()).exists();
    assertThat(written.json().getFileName().toString()).startsWith("水位水位").endsWith(".json");
  }

  @Test
  void a_file_in_place_of_the_folder_is_one_clear_line() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "x");
    assertThatThrownBy(() -> writer.write(photo("port.jpg", "aa"), picture, file))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("taken")
        .hasMessageContaining("it is a file")
        .hasMessageNotContaining("\n");
    assertThat(file).hasContent("x");
  }

  @Test
  void when_a_file_cannot_be_placed_nothing_half_written_stays() throws IOException {
    // A folder of the CSV's name cannot be replaced by a file.
    writer.write(photo("port.jpg", "aa"), picture, folder);
    Files.delete(folder.resolve("port.csv"));
    Files.createDirectories(folder.resolve("port.csv/inside"));
    assertThatThrownBy(() -> writer.write(photo("port.jpg", "aa"), picture, folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("port.jpg");
    assertThat(names(folder)).noneMatch(name -> name.endsWith(".part"));
  }

  @Test
  void the_same_results_are_the_same_bytes() throws IOException {
    WrittenReport one = writer.write(photo("p.jpg", "aa"), picture, folder.resolve("1"));
    WrittenReport two = writer.write(photo("p.jpg", "aa"), picture, folder.resolve("2"));
    assertThat(one.json()).hasSameBinaryContentAs(two.json());
    assertThat(one.csv()).hasSameBinaryContentAs(two.csv());
    assertThat(one.picture()).hasSameBinaryContentAs(two.picture());
  }

  private static ScoredPhoto photo(String file, String hash) {
    ScoredPhoto scored = Scenes.scored("dev-023");
    PhotoInfo p = scored.photo();
    PhotoInfo named =
        new PhotoInfo(file, sha(hash), p.widthPx(), p.heightPx(), "jpeg", 8, 1, Optional.empty());
    return Scenes.photo(named, scored.settings(), scored.row(), scored.joints());
  }

  private static String sha(String hash) {
    return hash.repeat(32);
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Set<String> names = new TreeSet<>();
      files.forEach(file -> names.add(file.getFileName().toString()));
      return names;
    }
  }
}
