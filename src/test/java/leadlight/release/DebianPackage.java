package leadlight.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A Debian package of the release's folder: {@code /usr/lib/leadlight}, {@code /usr/share}. */
final class DebianPackage {

  private static final Path SOURCES = Path.of("src/release/debian");

  private final Path home;
  private final Path out;
  private final String version;

  DebianPackage(Path home, Path out, String version) {
    this.home = home;
    this.out = out;
    this.version = version;
  }

  /** True where Debian's own tools are. */
  static boolean possible() {
    return Files.isExecutable(Path.of("/usr/bin/dpkg-deb"));
  }

  void make() throws IOException {
    Path root = out.resolve("debian");
    Path lib = root.resolve("usr/lib/leadlight");
    for (String part : List.of("app", "bin", "runtime")) {
      Folders.copy(home.resolve(part), lib.resolve(part));
    }
    Folders.copy(home.resolve("share"), root.resolve("usr/share"));
    Files.createDirectories(root.resolve("usr/bin"));
    Files.createSymbolicLink(
        root.resolve("usr/bin/leadlight"), Path.of("../lib/leadlight/bin/leadlight"));
    // Debian's place for the licence.
    Path doc = root.resolve("usr/share/doc/leadlight");
    Files.move(doc.resolve("LICENSE"), doc.resolve("copyright"));
    try (Stream<Path> pages = Files.list(root.resolve("usr/share/man/man1"))) {
      for (Path page : pages.toList()) {
        Tool.run("gzip", List.of("-9n", page.toString()));
      }
    }
    control(root);
    String name = "leadlight_" + version + "_" + architecture() + ".deb";
    Tool.run(
        "dpkg-deb",
        List.of(
            "-Zxz",
            "-z1",
            "--root-owner-group",
            "--build",
            root.toString(),
            out.resolve(name).toString()));
    Folders.remove(root);
  }

  private void control(Path root) throws IOException {
    Path control = Files.createDirectories(root.resolve("DEBIAN"));
    Files.writeString(
        control.resolve("control"),
        Files.readString(SOURCES.resolve("control"))
            .replace("@VERSION@", version)
            .replace("@ARCHITECTURE@", architecture())
            .replace("@KILOBYTES@", "" + Folders.bytes(root) / 1024)
            .replace("@DEPENDS@", String.join(", ", dependencies())));
    for (String script : List.of("postinst", "prerm")) {
      Path file = control.resolve(script);
      Files.copy(SOURCES.resolve(script), file, StandardCopyOption.REPLACE_EXISTING);
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private static String architecture() throws IOException {
    return Tool.run("dpkg", List.of("--print-architecture")).strip();
  }

  /** The packages that own the libraries of the system which ours are linked with. */
  private NavigableSet<String> dependencies() throws IOException {
    NavigableSet<String> packages = new TreeSet<>();
    for (String library : needed()) {
      String owner = Tool.run("dpkg-query", List.of("--search", "*/" + library));
      packages.add(owner.replaceFirst("(?s):.*", ""));
    }
    return packages;
  }

  private NavigableSet<String> needed() throws IOException {
    NavigableSet<String> needed = new TreeSet<>();
    List<Path> ours;
    try (Stream<Path> files = Files.walk(home)) {
      ours = files.filter(f -> f.getFileName().toString().matches("java|.*\\.so")).toList();
    }
    for (Path library : ours) {
      Tool.run("objdump", List.of("-p", library.toString()))
          .lines()
          .filter(line -> line.startsWith("  NEEDED"))
          .map(line -> line.replaceFirst("  NEEDED +", ""))
          .forEach(needed::add);
    }
    ours.forEach(library -> needed.remove(library.getFileName().toString()));
    return needed;
  }
}
