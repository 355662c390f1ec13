package leadlight.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ReleaseTest {

  private static final NativeParts LINUX = new NativeParts("Linux", "x86_64");

  @TempDir Path folder;
  private Path app;

  @BeforeEach
  void aBuild() throws IOException {
    app = folder.resolve("a home/app");
    Files.createDirectories(folder.resolve("lib"));
    Files.createFile(folder.resolve("leadlight.jar"));
    jar(
        "opencv-1.jar",
        "org/opencv/core/Mat.class",
        "nu/pattern/opencv/linux/x86_64/libopencv_java490.so",
        "nu/pattern/opencv/osx/ARMv8/libopencv_java490.dylib",
        "nu/pattern/opencv/windows/x86_64/opencv_java490.dll");
    jar(
        "sqlite-jdbc-1.jar",
        "org/sqlite/JDBC.class",
        "org/sqlite/native/Linux/x86_64/libsqlitejdbc.so",
        "org/sqlite/native/Linux-Musl/x86_64/libsqlitejdbc.so");
  }

  private void jar(String name, String... entries) throws IOException {
    try (ZipOutputStream out =
        new ZipOutputStream(Files.newOutputStream(folder.resolve("lib").resolve(name)))) {
      for (String entry : entries) {
        out.putNextEntry(new ZipEntry(entry));
        out.write(entry.getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  @Test
  void a_release_has_the_native_libraries_of_its_system_alone() throws IOException {
    LINUX.layOut(folder, app);

    assertThat(app.resolve("native/libopencv_java490.so"))
        .hasContent("nu/pattern/opencv/linux/x86_64/libopencv_java490.so");
    assertThat(app.resolve("native/libsqlitejdbc.so"))
        .hasContent("org/sqlite/native/Linux/x86_64/libsqlitejdbc.so");
    try (ZipFile opencv = new ZipFile(app.resolve("lib/opencv-1.jar").toFile())) {
      assertThat(opencv.stream().map(ZipEntry::getName))
          .containsExactly("org/opencv/core/Mat.class");
    }
  }

  @Test
  void a_system_that_a_library_is_not_made_for_has_no_release() {
    assertThatThrownBy(() -> new NativeParts("Linux", "riscv64").layOut(folder, app))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("riscv64");
  }

  /** With a stand-in for Java that says what it was asked for. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void its_launcher_starts_its_own_java_from_any_folder_by_a_link() throws Exception {
    Path home = app.getParent();
    LINUX.layOut(folder, app);
    new Launchers(LINUX).write(home);
    Path java = Files.createDirectories(home.resolve("runtime/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\nfor a; do printf '[%s]' \"$a\"; done\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    Path link = Files.createSymbolicLink(folder.resolve("ll"), home.resolve("bin/leadlight"));

    assertThat(Tool.run(link.toString(), List.of("score", "my photo.jpg", "ü & %")))
        .contains("-Dleadlight.opencv=" + app.toRealPath() + "/native/libopencv_java490.so]")
        .endsWith("[-jar][" + app.toRealPath() + "/leadlight.jar][score][my photo.jpg][ü & %]");
  }
}
