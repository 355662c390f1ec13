package leadlight.vision.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadlight.model.UserError;
import leadlight.vision.Threads;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opencv.core.Core;

class NativeLibraryTest {

  @TempDir Path folder;

  @Test
  void several_programs_at_once_share_one_whole_copy() throws Exception {
    List<Process> programs = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      programs.add(start(folder));
    }
    for (Process program : programs) {
      assertThat(said(program)).isEqualTo("width 2, threads 1");
    }
    Path copy = packed().unpackedIn(folder.resolve("leadlight"));
    assertThat(filesIn(folder.resolve("leadlight")))
        .containsExactly(copy.getFileName().toString(), copy.getFileName() + ".lock");
  }

  @Test
  void a_second_start_writes_nothing() throws Exception {
    Path copy = packed().unpackedIn(folder);
    Object written = Files.getLastModifiedTime(copy);
    assertThat(packed().unpackedIn(folder)).isEqualTo(copy);
    assertThat(Files.getLastModifiedTime(copy)).isEqualTo(written);
  }

  @Test
  void a_cut_off_copy_and_one_left_aside_are_replaced() throws Exception {
    Path copy = packed().unpackedIn(folder);
    long size = Files.size(copy);
    Files.write(copy, new byte[100]);
    Files.write(folder.resolve(copy.getFileName() + ".part"), new byte[(int) size + 7]);
    assertThat(Files.size(packed().unpackedIn(folder))).isEqualTo(size);
    assertThat(filesIn(folder)).hasSize(2);
  }

  @Test
  void a_copy_of_the_right_length_that_was_changed_is_replaced() throws Exception {
    Path copy = packed().unpackedIn(folder.resolve("leadlight"));
    byte[] whole = Files.readAllBytes(copy);
    Files.write(copy, new byte[whole.length]);
    assertThat(said(start(folder))).endsWith("width 2, threads 1");
    assertThat(Files.readAllBytes(copy)).isEqualTo(whole);
  }

  @Test
  void without_a_folder_to_write_the_run_has_a_copy_of_its_own_and_removes_it() throws Exception {
    Path file = Files.createFile(folder.resolve("file"));
    assertThat(said(start(file))).isEqualTo("width 2, threads 1");
    assertThat(filesIn(folder)).containsExactly("file", "tmp");
    assertThat(filesIn(folder.resolve("tmp"))).isEmpty();
  }

  @Test
  void a_folder_that_is_a_file_is_an_input_output_error() throws Exception {
    Path file = Files.createFile(folder.resolve("file"));
    assertThatThrownBy(() -> packed().unpackedIn(file)).isInstanceOf(IOException.class);
  }

  @Test
  void a_release_without_its_library_says_so_in_one_line() {
    assertThatThrownBy(() -> NativeLibrary.start(folder.resolve("libgone.so")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("libgone.so")
        .hasMessageContaining("install Leadlight again");
  }

  @Test
  void the_number_of_threads_can_be_set() {
    NativeLibrary.load();
    int before = Core.getNumThreads();
    try {
      Threads.set(1);
      assertThat(Core.getNumThreads()).isEqualTo(1);
      assertThatThrownBy(() -> Threads.set(0)).hasMessageContaining("at least 1, is 0");
    } finally {
      Core.setNumThreads(before);
    }
  }

  private static PackedLibrary packed() throws IOException {
    return new PackedLibrary(NativeLibrary.find(Platform.current()));
  }

  /** Starts {@link LoadOnce} with the cache below a folder, and temporary files in "tmp" beside. */
  private Process start(Path cache) throws IOException {
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    ProcessBuilder program =
        new ProcessBuilder(
            ProcessHandle.current().info().command().orElseThrow(),
            "-Djava.io.tmpdir=" + temporary,
            "-cp",
            System.getProperty("java.class.path"),
            LoadOnce.class.getName());
    program.environment().put("XDG_CACHE_HOME", cache.toString());
    return program.redirectErrorStream(true).start();
  }

  private static String said(Process program) throws IOException {
    return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }

  private static List<String> filesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void anotherProcessIsToldTheLibraryThatThisOneLoaded() {
    String name = "-Dleadlight.opencv=";
    assertThat(NativeLibrary.option()).startsWith(name);
    assertThat(Path.of(NativeLibrary.option().substring(name.length()))).isRegularFile();
  }
}
