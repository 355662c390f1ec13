package leadlight.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The classes that common calls load, for {@code bin/archive-classes}. */
final class ClassList {

  private ClassList() {}

  static void write(Path home) throws IOException {
    Path scratch = Files.createTempDirectory("leadlight-classes-");
    Set<String> classes = new LinkedHashSet<>();
    for (List<String> call : calls(home, scratch)) {
      Path list = scratch.resolve("list");
      List<String> command =
          new ArrayList<>(
              List.of(
                  "-XX:DumpLoadedClassList=" + list,
                  "-XX:+UseSerialGC",
                  "-Djava.awt.headless=true",
                  "-Dleadlight.opencv=" + Folders.only(home.resolve("app/native"), "*opencv*"),
                  "-Dorg.sqlite.lib.path=" + home.resolve("app/native"),
                  "-jar",
                  home.resolve("app/leadlight.jar").toString()));
      command.addAll(call);
      Tool.run(JavaImage.java(home), command);
      classes.addAll(Files.readAllLines(list));
    }
    Files.write(home.resolve("app/classes.list"), classes);
    Folders.remove(scratch);
  }

  private static List<List<String>> calls(Path home, Path scratch) {
    String sample = home.resolve("share/doc/leadlight/sample.jpg").toString();
    String out = scratch.resolve("out").toString();
    return List.of(
        List.of("--help"),
        List.of("--version"),
        List.of("connector", "list"),
        List.of("score", sample, "--leads", "19", "--pitch", "0.5", "--out", out),
        List.of("record", "--help"));
  }
}
