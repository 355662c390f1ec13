package leadlight.release;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * The jars without native libraries, and those of one system beside them.
 *
 * @param os as Java names it
 * @param arch "x86_64" or "aarch64"
 */
record NativeParts(String os, String arch) {

  /** Where org.openpnp:opencv and org.xerial:sqlite-jdbc keep theirs. */
  private static final Map<String, String> OPENCV = Map.of("x86_64", "x86_64", "aarch64", "ARMv8");

  private String family() {
    return os.startsWith("Windows") ? "Windows" : os.startsWith("Mac") ? "Mac" : "Linux";
  }

  private String packedOpencv() {
    String folder =
        switch (family()) {
          case "Windows" -> "windows";
          case "Mac" -> "osx";
          default -> "linux";
        };
    return "nu/pattern/opencv/" + folder + "/" + OPENCV.get(arch) + "/" + opencv();
  }

  private String packedSqlite() {
    return "org/sqlite/native/" + family() + "/" + arch + "/" + sqlite();
  }

  /** File name of OpenCV's library. */
  String opencv() {
    return family().equals("Windows") ? "opencv_java490.dll" : "libopencv_java490" + ending();
  }

  /** File name of SQLite's library. */
  String sqlite() {
    return family().equals("Windows") ? "sqlitejdbc.dll" : "libsqlitejdbc" + ending();
  }

  private String ending() {
    return family().equals("Mac") ? ".dylib" : ".so";
  }

  /** Lays out {@code leadlight.jar}, {@code lib} and {@code native} in the folder. */
  void layOut(Path target, Path app) throws IOException {
    Files.createDirectories(app.resolve("lib"));
    Files.createDirectories(app.resolve("native"));
    Files.copy(
        target.resolve("leadlight.jar"),
        app.resolve("leadlight.jar"),
        StandardCopyOption.COPY_ATTRIBUTES);
    try (DirectoryStream<Path> jars = Files.newDirectoryStream(target.resolve("lib"), "*.jar")) {
      for (Path jar : jars) {
        strip(jar, app);
      }
    }
    for (String library : new String[] {opencv(), sqlite()}) {
      if (!Files.exists(app.resolve("native").resolve(library))) {
        throw new IllegalStateException("no " + library + " for " + os + " on " + arch);
      }
    }
  }

  /** Copies a jar without its native libraries; those of this system go beside it. */
  private void strip(Path jar, Path app) throws IOException {
    Path stripped = app.resolve("lib").resolve(jar.getFileName());
    String name = jar.getFileName().toString();
    if (!name.startsWith("opencv-") && !name.startsWith("sqlite-jdbc-")) {
      Files.copy(jar, stripped, StandardCopyOption.COPY_ATTRIBUTES);
      return;
    }
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(stripped))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        take(entry, in, out, app.resolve("native"));
      }
    }
    Files.setLastModifiedTime(stripped, Files.getLastModifiedTime(jar));
  }

  private void take(ZipEntry entry, InputStream in, ZipOutputStream out, Path natives)
      throws IOException {
    String name = entry.getName();
    if (name.equals(packedOpencv()) || name.equals(packedSqlite())) {
      Files.copy(in, natives.resolve(name.replaceFirst(".*/", "")));
    } else if (!name.matches(".*\\.(so|dll|dylib)")) {
      ZipEntry same = new ZipEntry(name);
      same.setTime(entry.getTime());
      out.putNextEntry(same);
      in.transferTo((OutputStream) out);
      out.closeEntry();
    }
  }
}
