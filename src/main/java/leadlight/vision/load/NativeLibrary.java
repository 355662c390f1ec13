package leadlight.vision.load;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.model.UserError;

/**
 * Loads OpenCV's native library, only when first needed. It is unpacked once per machine and user,
 * not per start; where the user's cache folder cannot be written, into a folder of this run alone.
 * A release carries it unpacked beside the program and names it in {@value #BESIDE}. Why so: {@code
 * docs/start-up.md}.
 */
public final class NativeLibrary {

  private static final String BESIDE = "leadlight.opencv";

  /** What was loaded. */
  private static Optional<Path> loaded = Optional.empty();

  /** What is to be done as soon as it is loaded. */
  private static Optional<Runnable> then = Optional.empty();

  private NativeLibrary() {}

  /** Does a thing now or, if the library is not loaded yet, then; of several the last. */
  public static synchronized void whenLoaded(Runnable what) {
    then = Optional.of(what);
    if (loaded.isPresent()) {
      what.run();
    }
  }

  /**
   * Loads the library unless that is done; cheap enough to call before every operation.
   *
   * @throws UserError if there is no library for the platform or it does not start on it
   */
  public static synchronized void load() {
    if (loaded.isEmpty()) {
      String beside = System.getProperty(BESIDE);
      if (beside != null) {
        Path library = Path.of(beside).toAbsolutePath();
        start(library);
        loaded = Optional.of(library);
      } else {
        Platform platform = Platform.current();
        loaded =
            Optional.of(
                load(
                    platform,
                    platform.cacheFolder(System.getenv(), System.getProperty("user.home"))));
      }
      then.ifPresent(Runnable::run);
    }
  }

  /** What another process of this program is started with, to load the very same library. */
  public static synchronized String option() {
    load();
    return "-D" + BESIDE + "=" + loaded.orElseThrow();
  }

  /**
   * Starts the release's own copy. It is as safe from others as the program that lies beside it.
   *
   * @throws UserError if the library is missing or does not start
   */
  static void start(Path library) {
    try {
      System.load(library.toString());
    } catch (UnsatisfiedLinkError e) {
      throw new UserError(
          "OpenCV's native library does not start here ("
              + e.getMessage()
              + "); install Leadlight again");
    }
  }

  private static Path load(Platform platform, Optional<Path> cache) {
    URL packed = find(platform);
    try {
      PackedLibrary library = new PackedLibrary(packed);
      Optional<Path> kept = cache.flatMap(folder -> startedFromCache(library, folder));
      return kept.isPresent() ? kept.get() : startedFromOwnFolder(library);
    } catch (IOException | UnsatisfiedLinkError e) {
      throw new UserError(
          "OpenCV's native library does not start here ("
              + e.getMessage()
              + "); free 100 MB in "
              + cache.map(Path::toString).orElse(System.getProperty("java.io.tmpdir"))
              + " or set XDG_CACHE_HOME to a folder that may hold programs");
    }
  }

  /**
   * Finds the library in the class path.
   *
   * @throws UserError if there is none for the platform
   */
  static URL find(Platform platform) {
    return platform
        .resource()
        .map(NativeLibrary.class::getResource)
        .orElseThrow(
            () ->
                new UserError(
                    "no OpenCV library for "
                        + platform.os()
                        + " on "
                        + platform.arch()
                        + "; run Leadlight on Linux or macOS (x86_64, aarch64) or Windows"
                        + " (x86_64)"));
  }

  /**
   * Empty if the folder cannot be used; a copy that does not load is removed for the next start.
   */
  private static Optional<Path> startedFromCache(PackedLibrary library, Path folder) {
    try {
      Path unpacked = library.unpackedIn(folder);
      try {
        System.load(unpacked.toString());
        return Optional.of(unpacked);
      } catch (UnsatisfiedLinkError e) {
        Files.delete(unpacked);
        return Optional.empty();
      }
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Path startedFromOwnFolder(PackedLibrary library) throws IOException {
    Path folder = Files.createTempDirectory("leadlight-");
    folder.toFile().deleteOnExit();
    try {
      Path unpacked = library.unpackedIn(folder);
      System.load(unpacked.toString());
      return unpacked;
    } finally {
      try (var files = Files.list(folder)) {
        files.forEach(file -> file.toFile().deleteOnExit());
      }
    }
  }
}
