package leadlight.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Makes the releases for the system that it runs on, from {@code target/leadlight.jar} and {@code
 * target/lib}, and writes their sizes: {@code mvn -Prelease verify}. Arguments: the build's folder,
 * the version.
 */
public final class Release {

  private final Path target;
  private final Path out;
  private final String version;

  private Release(Path target, String version) {
    this.target = target;
    this.out = target.resolve("release");
    this.version = version;
  }

  /** Makes all kinds that this system can. */
  public static void main(String[] args) throws IOException {
    new Release(Path.of(args[0]), args[1]).make();
  }

  private void make() throws IOException {
    Folders.remove(out);
    String name = "leadlight-" + version + "-" + system();
    Path home = Files.createDirectories(out.resolve(name));
    NativeParts parts = new NativeParts(System.getProperty("os.name"), arch());
    parts.layOut(target, home.resolve("app"));
    new JavaImage(home).make();
    new Launchers(parts).write(home);
    Guides.write(target, home);
    ClassList.write(home);

    Tool.run("tar", tar(name));
    AppImage.make(home, out.resolve("image"), version, parts);
    if (DebianPackage.possible()) {
      new DebianPackage(home, out, version).make();
    }
    Files.writeString(out.resolve("sizes.md"), sizes(home));
    System.out.println(Files.readString(out.resolve("sizes.md")));
  }

  private List<String> tar(String name) {
    boolean windows = system().startsWith("windows");
    String file = out.resolve(name + (windows ? ".zip" : ".tar.gz")).toString();
    return List.of("-a", "-c", "-f", file, "-C", out.toString(), name);
  }

  private String sizes(Path home) throws IOException {
    StringBuilder table = new StringBuilder("| what | MB |\n|---|---|\n");
    line(table, "plain jar, without lib", target.resolve("leadlight.jar"));
    line(table, "in lib: OpenCV's jar", Folders.only(target.resolve("lib"), "opencv-*.jar"));
    line(table, "in lib: SQLite's jar", Folders.only(target.resolve("lib"), "sqlite-jdbc-*.jar"));
    line(table, "release: whole folder", home);
    line(table, "... runtime", home.resolve("runtime"));
    line(table, "... jars without native libraries", home.resolve("app/lib"));
    line(table, "... native libraries of this system", home.resolve("app/native"));
    line(table, "application image", out.resolve("image"));
    try (Stream<Path> files = Files.list(out)) {
      files
          .filter(Files::isRegularFile)
          .sorted()
          .forEach(file -> line(table, file.getFileName().toString(), file));
    }
    return table.toString();
  }

  private static void line(StringBuilder table, String what, Path file) {
    table.append(String.format(Locale.ROOT, "| %s | %.1f |%n", what, Folders.bytes(file) / 1e6));
  }

  private static String system() {
    String os = System.getProperty("os.name").toLowerCase(Locale.ROOT).replaceAll(" .*", "");
    return os + "-" + arch();
  }

  private static String arch() {
    String arch = System.getProperty("os.arch");
    return arch.equals("amd64") ? "x86_64" : arch.equals("arm64") ? "aarch64" : arch;
  }
}
