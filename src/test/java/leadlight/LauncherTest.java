package leadlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher on a copy of its own in a folder with a space, with stand-ins for Java and Maven
 * that say what they were asked for.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherTest {

  private static final String BUILDING = "building the program";

  @TempDir Path folder;
  private Path home;

  @BeforeEach
  void layOut() throws IOException {
    home = Files.createDirectories(folder.resolve("lead light"));
    Files.createDirectories(home.resolve("src/main"));
    Files.createDirectories(home.resolve("models"));
    Files.createFile(home.resolve("pom.xml"));
    Files.copy(Path.of("leadlight"), home.resolve("leadlight"), StandardCopyOption.COPY_ATTRIBUTES);
    script("java", "for a; do printf '[%s]' \"$a\"; done");
    script("mvn", "mkdir -p target && touch target/leadlight.jar");
  }

  @Test
  void it_runs_through_a_link_from_any_folder_and_hands_arguments_on_unbroken() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link"), home.resolve("leadlight"));
    assertThat(run(link, "score", "my photo.jpg", "ü*"))
        .contains("[-jar][" + home.toRealPath() + "/target/leadlight.jar]")
        .endsWith("[score][my photo.jpg][ü*]");
  }

  @Test
  void it_builds_the_first_time_only() throws Exception {
    assertThat(run(home.resolve("leadlight"))).contains(BUILDING);
    assertThat(run(home.resolve("leadlight"))).doesNotContain(BUILDING);
  }

  @Test
  void it_builds_again_after_a_change_of_a_source_and_then_is_content() throws Exception {
    run(home.resolve("leadlight"));
    Path source = Files.createFile(home.resolve("src/main/Changed.java"));
    Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusMillis(20)));
    Thread.sleep(40);
    assertThat(run(home.resolve("leadlight"))).contains(BUILDING);
    assertThat(run(home.resolve("leadlight"))).doesNotContain(BUILDING);
  }

  @Test
  void a_failed_build_is_said_and_nothing_is_run() throws Exception {
    script("mvn", "echo trouble; exit 1");
    assertThat(run(home.resolve("leadlight"), "score"))
        .contains("trouble", "leadlight: the build failed")
        .doesNotContain("[score]");
  }

  @Test
  void several_first_starts_at_once_build_once() throws Exception {
    script("mvn", "echo built; sleep 0.3; mkdir -p target && touch target/leadlight.jar");
    List<Process> starts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      starts.add(start(home.resolve("leadlight"), "go"));
    }
    StringBuilder said = new StringBuilder();
    for (Process start : starts) {
      said.append(said(start));
    }
    assertThat(said).containsOnlyOnce("built").contains("[go]");
  }

  private void script(String name, String body) throws IOException {
    Path file = Files.createDirectories(folder.resolve("bin")).resolve(name);
    Files.writeString(file, "#!/bin/sh\n" + body + "\n");
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  private String run(Path launcher, String... arguments) throws IOException {
    return said(start(launcher, arguments));
  }

  private Process start(Path launcher, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder program = new ProcessBuilder(command).directory(folder.toFile());
    program.environment().remove("JAVA_HOME");
    program.environment().merge("PATH", folder.resolve("bin") + ":", (path, bin) -> bin + path);
    return program.redirectErrorStream(true).start();
  }

  private static String said(Process program) throws IOException {
    return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }
}
