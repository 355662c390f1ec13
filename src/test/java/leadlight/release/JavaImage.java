package leadlight.release;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A Java runtime with the modules that the program and its libraries use. */
final class JavaImage {

  /**
   * What jdeps cannot see, for it is found by its service alone: elliptic curves, with which
   * PostgreSQL servers speak TLS. Modules that only optional parts of libraries would use are left
   * out by {@code --ignore-missing-deps}.
   */
  private static final List<String> MODULES_BESIDES = List.of("jdk.crypto.ec");

  /** Windows, sound and splash screens; the program runs headless. Linux' names. */
  private static final String UNUSED =
      "glob:/java.desktop/lib/libawt_xawt.so,glob:/java.desktop/lib/libjawt.so,"
          + "glob:/java.desktop/lib/libsplashscreen.so,glob:/java.desktop/lib/libjsound.so";

  private final Path home;

  JavaImage(Path home) {
    this.home = home;
  }

  void make() throws IOException {
    List<String> modules = new ArrayList<>(List.of(found().split(",")));
    modules.addAll(MODULES_BESIDES);
    Tool.ofTheJdk(
        "jlink",
        List.of(
            "--add-modules",
            String.join(",", modules),
            "--strip-java-debug-attributes",
            "--no-header-files",
            "--no-man-pages",
            "--compress=2",
            "--exclude-files=" + UNUSED,
            "--output",
            home.resolve("runtime").toString()));
    // Java's own classes, ready to map where no archive of ours fits.
    Tool.run(java(home), List.of("-Xshare:dump", "-XX:+UseSerialGC"));
  }

  static String java(Path home) {
    return home.resolve("runtime/bin/java").toString();
  }

  private String found() throws IOException {
    try (Stream<Path> jars = Files.list(home.resolve("app/lib"))) {
      String path = String.join(File.pathSeparator, jars.map(Path::toString).sorted().toList());
      return Tool.ofTheJdk(
              "jdeps",
              List.of(
                  "--print-module-deps",
                  "--ignore-missing-deps",
                  "--recursive",
                  "--multi-release",
                  "17",
                  "-cp",
                  path,
                  home.resolve("app/leadlight.jar").toString()))
          .strip();
    }
  }
}
