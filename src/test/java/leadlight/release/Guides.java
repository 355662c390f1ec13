package leadlight.release;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leadlight.cli.Main;

/** Licence, notices, bill of materials, manual pages and completion, under {@code share}. */
final class Guides {

  private static final Pattern COMMANDS = Pattern.compile("(?s)\\.SH COMMANDS\n\\.nf\n(.*?)\\.fi");
  private static final Pattern NAME = Pattern.compile("(?m)^  ([a-z][a-z\\\\-]*)");

  private Guides() {}

  static void write(Path target, Path home) throws IOException {
    Path doc = Files.createDirectories(home.resolve("share/doc/leadlight"));
    Files.copy(Path.of("LICENSE"), doc.resolve("LICENSE"));
    Files.copy(Path.of("src/main/resources/META-INF/NOTICE"), doc.resolve("NOTICE"));
    Files.copy(Path.of("CHANGELOG.md"), doc.resolve("CHANGELOG.md"));
    Files.copy(Path.of("sample-images/base-station-video-mixed.jpg"), doc.resolve("sample.jpg"));
    Path materials = target.resolve("classes/META-INF/sbom");
    if (!Files.isDirectory(materials)) {
      throw new IllegalStateException("no bill of materials; build without -o");
    }
    Files.copy(Folders.only(materials, "*.json"), doc.resolve("sbom.json"));
    Path completions = home.resolve("share/bash-completion/completions");
    Files.writeString(
        Files.createDirectories(completions).resolve("leadlight"), said("completion"));
    manual(Files.createDirectories(home.resolve("share/man/man1")), List.of());
  }

  private static void manual(Path folder, List<String> command) throws IOException {
    String page = said(Stream.concat(Stream.of("man"), command.stream()).toArray(String[]::new));
    List<String> words = new ArrayList<>(List.of("leadlight"));
    words.addAll(command);
    Files.writeString(folder.resolve(String.join("-", words) + ".1"), page);
    Matcher commands = COMMANDS.matcher(page);
    if (commands.find()) {
      for (var name : NAME.matcher(commands.group(1)).results().toList()) {
        List<String> below = new ArrayList<>(command);
        below.add(name.group(1).replace("\\", ""));
        manual(folder, below);
      }
    }
  }

  private static String said(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    int status = Main.run(InputStream.nullInputStream(), stream, stream, arguments);
    String said = out.toString(StandardCharsets.UTF_8);
    if (status != 0) {
      throw new IllegalStateException(String.join(" ", arguments) + ": " + said);
    }
    return said;
  }
}
