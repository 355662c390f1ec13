package leadlight.vision.load;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Operating system and processor, as far as OpenCV's native library depends on them.
 *
 * @param os "linux", "osx", "windows" or what the JDK says
 * @param arch processor as the JDK says, "amd64" as "x86_64" and "arm64" as "aarch64"
 */
record Platform(String os, String arch) {

  private static final String FOLDER = "/nu/pattern/opencv/";

  /** What org.openpnp:opencv 4.9.0-0 carries, read from its jar. */
  private static final Map<String, String> LIBRARIES =
      Map.of(
          "linux x86_64", "linux/x86_64/libopencv_java490.so",
          "linux aarch64", "linux/ARMv8/libopencv_java490.so",
          "linux arm", "linux/ARMv7/libopencv_java490.so",
          "osx x86_64", "osx/x86_64/libopencv_java490.dylib",
          "osx aarch64", "osx/ARMv8/libopencv_java490.dylib",
          "windows x86_64", "windows/x86_64/opencv_java490.dll",
          "windows x86", "windows/x86_32/opencv_java490.dll");

  /** The machine this runs on. */
  static Platform current() {
    return of(System.getProperty("os.name"), System.getProperty("os.arch"));
  }

  /** From the JDK's {@code os.name} and {@code os.arch}. */
  static Platform of(String osName, String osArch) {
    String name = osName.toLowerCase(Locale.ROOT);
    String os = name.startsWith("windows") ? "windows" : name.startsWith("mac") ? "osx" : name;
    String arch =
        switch (osArch) {
          case "amd64" -> "x86_64";
          case "arm64" -> "aarch64";
          default -> osArch;
        };
    return new Platform(os, arch);
  }

  /** Where the class path holds the library; empty if there is none for this platform. */
  Optional<String> resource() {
    return Optional.ofNullable(LIBRARIES.get(os + " " + arch)).map(FOLDER::concat);
  }

  /**
   * The user's own cache folder: {@code XDG_CACHE_HOME} (XDG Base Directory Specification 0.8,
   * which has relative paths ignored), else {@code LOCALAPPDATA} on Windows, {@code
   * ~/Library/Caches} on macOS, {@code ~/.cache} elsewhere; empty if the account has no home.
   */
  Optional<Path> cacheFolder(Map<String, String> environment, String home) {
    return absolute(environment.get("XDG_CACHE_HOME"))
        .or(() -> ofThePlatform(environment, home))
        .map(folder -> folder.resolve("leadlight"));
  }

  private Optional<Path> ofThePlatform(Map<String, String> environment, String home) {
    return switch (os) {
      case "windows" -> absolute(environment.get("LOCALAPPDATA"));
      case "osx" -> absolute(home).map(folder -> folder.resolve("Library/Caches"));
      default -> absolute(home).map(folder -> folder.resolve(".cache"));
    };
  }

  private static Optional<Path> absolute(String folder) {
    return Optional.ofNullable(folder).map(Path::of).filter(Path::isAbsolute);
  }
}
