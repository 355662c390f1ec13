package leadlight.release;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An application folder with a native launcher, by jpackage. */
final class AppImage {

  private AppImage() {}

  static void make(Path home, Path folder, String version, NativeParts parts) throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--type",
                "app-image",
                "--name",
                "leadlight",
                "--app-version",
                version,
                "--input",
                home.resolve("app").toString(),
                "--main-jar",
                "leadlight.jar",
                "--runtime-image",
                home.resolve("runtime").toString(),
                "--dest",
                folder.toString()));
    for (String option :
        List.of(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-Xmn32m",
            "-Xmx768m",
            "-Djava.awt.headless=true",
            "-Dfile.encoding=UTF-8",
            "-Dleadlight.opencv=$APPDIR/native/" + parts.opencv(),
            "-Dorg.sqlite.lib.path=$APPDIR/native",
            "-Dorg.sqlite.lib.name=" + parts.sqlite())) {
      arguments.addAll(List.of("--java-options", option));
    }
    Tool.ofTheJdk("jpackage", arguments);
    Folders.copy(home.resolve("share"), folder.resolve("leadlight/share"));
  }
}
